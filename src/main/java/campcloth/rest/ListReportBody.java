package campcloth.rest;

import campcloth.figure.Refusal;
import campcloth.supply.ListHead;
import campcloth.supply.ListReport;
import campcloth.supply.SupplierLists;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What came of a supplier's list. */
@Schema(name = "ListReport", description = "What came of a supplier's list, or would come of it")
record ListReportBody(
        String supplier,

        @Schema(description = "whether it was only to be looked at")
        boolean dryRun,

        @Schema(description = "whether it was taken over; if not, the outcomes are what it would have come to")
        boolean written,

        CountsBody counts,
        @Schema(description = "the sign between cells") String delimiter,
        List<ColumnBody> columns,
        @Schema(description = "columns that were not read") List<IgnoredBody> ignoredColumns,

        @Schema(
                description =
                        "at most 1000 rows in the order of the list: those refused first, then those with notes, then"
                                + " the others, as far as there is room; all of them with Accept: application/x-ndjson")
        List<RowBody> rows) {

    /** Numbers of rows. */
    @Schema(name = "ListCounts", description = "The four outcomes add up to the rows; empty rows do not count")
    record CountsBody(long rows, long added, long changed, long unchanged, long refused) {}

    /** A column that was read. */
    @Schema(name = "ListColumn")
    record ColumnBody(
            String header,

            @Schema(description = "what it holds, by the name of the field", example = "weightGsm")
            String field,

            @Schema(description = "unit of the head; a unit in a cell goes before it") @Nullable
            String unit) {}

    /** A column that was not read. */
    @Schema(name = "ListColumnIgnored")
    record IgnoredBody(String header, String because) {}

    /** What came of a row. */
    @Schema(name = "ListRow")
    record RowBody(
            @Schema(description = "line of the list on which the row ends; the head is on line 1")
            long row,

            @Schema(description = "the supplier's key, empty where there is none")
            String key,

            ListReport.Outcome outcome,
            List<FieldError> errors,
            List<String> notes) {

        static RowBody of(ListReport.Row row) {
            return new RowBody(
                    row.line(),
                    row.key(),
                    row.outcome(),
                    row.errors().stream().map(FieldError::of).toList(),
                    row.notes());
        }
    }

    private static final int MOST_ERRORS = 100;

    static ListReportBody of(SupplierLists.Order order, ListReport report) {
        ListReport.Counts counts = report.counts();
        return new ListReportBody(
                order.supplier(),
                order.dryRun(),
                report.written(),
                new CountsBody(counts.rows(), counts.added(), counts.changed(), counts.unchanged(), counts.refused()),
                report.head().delimiter() == '\t'
                        ? "tab"
                        : Character.toString(report.head().delimiter()),
                report.head().columns().stream().map(ListReportBody::column).toList(),
                report.head().ignored().stream()
                        .map(column -> new IgnoredBody(column.header(), column.because()))
                        .toList(),
                report.rows().stream().map(RowBody::of).toList());
    }

    private static ColumnBody column(ListHead.Recognised column) {
        return new ColumnBody(
                column.header(), column.column().field(), column.unit().orElse(null));
    }

    /** The first of the reasons, each with the line of its row. */
    static List<FieldError> errors(ListReport report) {
        return report.rows().stream()
                .flatMap(row -> row.errors().stream().map(refusal -> error(row.line(), refusal)))
                .limit(MOST_ERRORS)
                .toList();
    }

    private static FieldError error(long line, Refusal refusal) {
        return new FieldError("line " + line + ", " + refusal.field(), refusal.sentence());
    }
}
