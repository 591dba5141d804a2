package campcloth.pages.lists;

import campcloth.figure.Refusal;
import campcloth.supply.ListOrder;
import campcloth.supply.ListReport;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists.OnBadRow;
import campcloth.supply.SupplierLists.Watcher;
import java.time.Instant;
import java.util.List;

/** A list that was sent by a form: first looked at, then, where its sender says so, taken over. */
final class UploadedList implements Watcher {

    /** How far it has come. */
    sealed interface Stage {

        /** Waits for its turn, or is being read and written. */
        record Working(boolean dryRun) implements Stage {}

        /** Was looked at; nothing is written. */
        record LookedAt(ListReport report) implements Stage {}

        /** Was taken over, or not where rows of it could not be used. */
        record Ended(ListReport report) implements Stage {}

        /** Nothing of it can be read; nothing is written. */
        record Unreadable(List<Refusal> refusals) implements Stage {

            public Unreadable {
                refusals = List.copyOf(refusals);
            }
        }

        /** The work was cut short by something that is not the list's fault; nothing is written. */
        record Broken() implements Stage {}
    }

    private final String id;
    private final String fileName;
    private final ListOrder order;
    private final OnBadRow onBadRow;
    private final Spool bytes;
    private volatile Stage stage = new Stage.Working(true);
    private volatile Instant touched;
    private volatile long read;
    private volatile long written;
    private volatile long indexed;

    UploadedList(String id, String fileName, ListOrder order, OnBadRow onBadRow, Spool bytes, Instant now) {
        this.id = id;
        this.fileName = fileName;
        this.order = order;
        this.onBadRow = onBadRow;
        this.bytes = bytes;
        this.touched = now;
    }

    String id() {
        return id;
    }

    String fileName() {
        return fileName;
    }

    ListOrder order() {
        return order;
    }

    OnBadRow onBadRow() {
        return onBadRow;
    }

    Spool bytes() {
        return bytes;
    }

    Stage stage() {
        return stage;
    }

    void stage(Stage now) {
        stage = now;
    }

    boolean isWorking() {
        return stage instanceof Stage.Working;
    }

    /** When somebody last asked for it. */
    Instant touched() {
        return touched;
    }

    void touch(Instant now) {
        touched = now;
    }

    /** Rows read so far in this stage. */
    long rowsRead() {
        return read;
    }

    /** Rows written so far. */
    long rowsWritten() {
        return written;
    }

    /** Cloths that can be found by searching so far. */
    long clothsIndexed() {
        return indexed;
    }

    void begin() {
        read = 0;
        written = 0;
        indexed = 0;
    }

    @Override
    public void read(long rows) {
        read = rows;
    }

    @Override
    public void written(long rows) {
        written = rows;
    }

    @Override
    public void indexed(long cloths) {
        indexed = cloths;
    }
}
