package campcloth.pages.lists;

import campcloth.figure.Refusal;
import campcloth.figure.Words;
import campcloth.job.Failure;
import campcloth.job.Job;
import campcloth.supply.Column;
import campcloth.supply.ListHead;
import campcloth.supply.ListJobs.KeptList;
import campcloth.supply.ListProgress;
import campcloth.supply.ListReport;
import campcloth.supply.ListReport.Outcome;
import campcloth.supply.SupplierLists.OnBadRow;
import java.util.Arrays;
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
        boolean isKept,
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
        BROKEN,
        CANCELLED
    }

    static SeenList of(KeptList list) {
        Job job = list.job();
        ListProgress progress = ListProgress.of(job);
        return new SeenList(
                job.id().toString(),
                Words.shortened(list.asked().fileName()),
                list.asked().how().supplier(),
                list.asked().onBadRow(),
                stage(list),
                list.report(),
                job.failure().map(Failure::refusals).orElse(List.of()),
                list.isKept(),
                progress.rowsRead(),
                progress.rowsWritten(),
                progress.clothsIndexed());
    }

    private static Stage stage(KeptList list) {
        boolean dryRun = list.asked().dryRun();
        return switch (list.job().state()) {
            case QUEUED, RUNNING -> dryRun ? Stage.LOOKING : Stage.TAKING;
            case DONE -> dryRun ? Stage.LOOKED_AT : isWritten(list) ? Stage.TAKEN : Stage.REFUSED;
            case FAILED -> isUnreadable(list.job()) ? Stage.UNREADABLE : Stage.BROKEN;
            case CANCELLED -> Stage.CANCELLED;
        };
    }

    private static boolean isWritten(KeptList list) {
        return list.report().map(ListReport::written).orElse(false);
    }

    private static boolean isUnreadable(Job job) {
        return job.failure().map(why -> !why.refusals().isEmpty()).orElse(false);
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

    /** Whether it can be taken over as it is, or the work be tried again. */
    public boolean isToBeTaken() {
        return isKept && (isOfUse() || stage == Stage.BROKEN || stage == Stage.CANCELLED);
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

    /** So many rows of a kind are shown at most. */
    public int mostRows() {
        return MOST_ROWS;
    }

    /** The column that reports call by this name; none for what is about no column. */
    public Optional<Column> columnOf(String field) {
        return Arrays.stream(Column.values())
                .filter(column -> column.field().equals(field))
                .findFirst();
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
