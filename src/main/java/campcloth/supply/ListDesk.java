package campcloth.supply;

import campcloth.outage.Crowded;
import campcloth.supply.SupplierLists.OnBadRow;
import campcloth.supply.SupplierLists.Watcher;
import java.io.IOException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** Where suppliers' lists are handed in, whoever asks. One at a time is taken over; a few wait, and not for ever. */
public final class ListDesk {

    /** Largest list, bytes. */
    public static final int MOST_BYTES = 16 * 1024 * 1024;

    private static final int MOST_WAITING = 8;
    private static final long PATIENCE_SECONDS = 120;

    private final SupplierLists lists;
    private final ListReader reader;
    private final Semaphore turn = new Semaphore(1, true);

    public ListDesk(SupplierLists lists, ListReader reader) {
        this.lists = lists;
        this.reader = reader;
    }

    /**
     * Takes a list over, or looks at it only.
     *
     * @param how what is said of the list
     * @param dryRun whether to report alone
     * @throws campcloth.figure.Refused where nothing of it can be read
     * @throws Crowded where too many are at it
     * @throws IOException where its bytes do not come
     */
    public ListReport take(ListOrder how, OnBadRow onBadRow, boolean dryRun, Spool list, Watcher watcher)
            throws IOException {
        SupplierLists.Order order = new SupplierLists.Order(how.supplier(), onBadRow, dryRun);
        if (turn.getQueueLength() >= MOST_WAITING || !getsATurn()) {
            throw new Crowded("as many lists wait to be taken over as may");
        }
        try {
            return lists.take(order, rows -> reader.read(list.in(), how, rows), watcher);
        } finally {
            turn.release();
        }
    }

    private boolean getsATurn() {
        try {
            return turn.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
