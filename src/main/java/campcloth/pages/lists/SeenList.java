package campcloth.pages.lists;

import campcloth.figure.Refusal;
import campcloth.figure.Words;
import campcloth.supply.ListHead;
import campcloth.supply.ListReport;
import campcloth.supply.ListReport.Outcome;
import campcloth.supply.SupplierLists.OnBadRow;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A list as a page shows it: where it stands now, and what came of it so far. */
public record SeenList(
        String id,
        String fileName,
        String supplier,
        OnBadRow onBadRow,
        Stage stage,
        Optional<ListReport> report,
        List<Refusal> refusals,
        long rowsRead,
        long rowsWritten,
        long clothsIndexed) {

    private static final int MOST_ROWS = 50;

    /** Where it stands. */
    public enum Stage {
        LOOKING,
        LOOKED_AT,
        TAKING,
        TAKEN,
        REFUSED,
        UNREADABLE,
        BROKEN
    }

    static SeenList of(UploadedList list) {
        UploadedList.Stage stage = list.stage();
        return new SeenList(
                list.id(),
                Words.shortened(list.fileName()),
                list.order().supplier(),
                list.onBadRow(),
                stage(stage),
                report(stage),
                stage instanceof UploadedList.Stage.Unreadable unreadable ? unreadable.refusals() : List.of(),
                list.rowsRead(),
                list.rowsWritten(),
                list.clothsIndexed());
    }

    private static Stage stage(UploadedList.Stage stage) {
        if (stage instanceof UploadedList.Stage.Working working) {
            return working.dryRun() ? Stage.LOOKING : Stage.TAKING;
        }
        if (stage instanceof UploadedList.Stage.Ended ended) {
            return ended.report().written() ? Stage.TAKEN : Stage.REFUSED;
        }
        if (stage instanceof UploadedList.Stage.LookedAt) {
            return Stage.LOOKED_AT;
        }
        return stage instanceof UploadedList.Stage.Unreadable ? Stage.UNREADABLE : Stage.BROKEN;
    }

    private static Optional<ListReport> report(UploadedList.Stage stage) {
        if (stage instanceof UploadedList.Stage.LookedAt looked) {
            return Optional.of(looked.report());
        }
        return stage instanceof UploadedList.Stage.Ended ended ? Optional.of(ended.report()) : Optional.empty();
    }

    public boolean isWorking() {
        return stage == Stage.LOOKING || stage == Stage.TAKING;
    }

    /** Whether there is anything to take over. */
    public boolean isOfUse() {
        return stage == Stage.LOOKED_AT
                && counts().map(c -> c.added() + c.changed() > 0).orElse(false)
                && !isHeldUp();
    }

    /** Whether rows that cannot be used keep all others out. */
    public boolean isHeldUp() {
        return onBadRow == OnBadRow.REFUSE_ALL
                && counts().map(c -> c.refused() > 0).orElse(false);
    }

    public Optional<ListReport.Counts> counts() {
        return report.map(ListReport::counts);
    }

    public List<ListHead.Recognised> columns() {
        return report.map(r -> r.head().columns()).orElse(List.of());
    }

    public List<ListHead.Ignored> ignored() {
        return report.map(r -> r.head().ignored()).orElse(List.of());
    }

    /** The first rows that cannot be used. */
    public List<ListReport.Row> bad() {
        return rows().filter(row -> row.outcome() == Outcome.REFUSED)
                .limit(MOST_ROWS)
                .toList();
    }

    /** The first rows that are used and of which there is something to know. */
    public List<ListReport.Row> noted() {
        return rows().filter(
                        row -> row.outcome() != Outcome.REFUSED && !row.notes().isEmpty())
                .limit(MOST_ROWS)
                .toList();
    }

    private Stream<ListReport.Row> rows() {
        return report.stream().flatMap(r -> r.rows().stream());
    }
}
