package campcloth.supply;

import campcloth.supply.SupplierLists.OnBadRow;
import campcloth.supply.SupplierLists.Watcher;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;

/** Where suppliers' lists are handed in, whoever asks. One at a time is taken over; the next one waits. */
public final class ListDesk {

    /** Largest list, bytes. */
    public static final int MOST_BYTES = 16 * 1024 * 1024;

    private static final long LOOK_MS = 250;

    private final SupplierLists lists;
    private final ListReader reader;
    /** How many lists were taken over or looked at since the start, how long that took, and how many wait now. */
    public record Load(long lists, Duration inAll, int waiting) {}

    private final LongAdder taken = new LongAdder();
    private final LongAdder nanos = new LongAdder();
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
        long begun = System.nanoTime();
        try {
            return lists.take(order, rows -> reader.read(list.in(), how, rows), watcher);
        } finally {
            taken.increment();
            nanos.add(System.nanoTime() - begun);
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

    public Load load() {
        return new Load(taken.sum(), Duration.ofNanos(nanos.sum()), turn.getQueueLength());
    }
}
