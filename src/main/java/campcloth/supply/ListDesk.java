package campcloth.supply;

import campcloth.supply.SupplierLists.OnBadRow;
import campcloth.supply.SupplierLists.Watcher;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** Where suppliers' lists are handed in, whoever asks. One at a time is taken over; the next one waits. */
public final class ListDesk {

    /** Largest list, bytes. */
    public static final int MOST_BYTES = 16 * 1024 * 1024;

    private static final long LOOK_MS = 250;

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
     * @throws IOException where its bytes do not come
     */
    public ListReport take(ListOrder how, OnBadRow onBadRow, boolean dryRun, Spool list, Watcher watcher)
            throws IOException {
        SupplierLists.Order order = new SupplierLists.Order(how.supplier(), onBadRow, dryRun);
        while (!hasItsTurn()) {
            watcher.waiting();
        }
        try {
            return lists.take(order, rows -> reader.read(list.in(), how, rows), watcher);
        } finally {
            turn.release();
        }
    }

    private boolean hasItsTurn() throws IOException {
        try {
            return turn.tryAcquire(LOOK_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("the list waited for its turn");
        }
    }
}
