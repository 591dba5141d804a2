package campcloth.supply;

import campcloth.outage.Crowded;
import campcloth.supply.SupplierLists.OnBadRow;
import campcloth.supply.SupplierLists.Watcher;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;

/** Where suppliers' lists are handed in, whoever asks. One at a time is taken over; a few wait, and not for ever. */
public final class ListDesk {

    /** Largest list, bytes. */
    public static final int MOST_BYTES = 16 * 1024 * 1024;

    private static final long LOOK_MS = 250;
    private static final int MOST_WAITING = 8;
    private static final long PATIENCE_SECONDS = 300;

    /** How many lists were taken over or looked at since the start, how long that took, and how many wait now. */
    public record Load(long lists, Duration inAll, int waiting) {}

    private final SupplierLists lists;
    private final ListReader reader;
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
     * @throws Crowded where too many are at it
     * @throws IOException where its bytes do not come
     */
    public ListReport take(ListOrder how, OnBadRow onBadRow, boolean dryRun, Spool list, Watcher watcher)
            throws IOException {
        SupplierLists.Order order = new SupplierLists.Order(how.supplier(), onBadRow, dryRun);
        waitForATurn(watcher);
        long begun = System.nanoTime();
        try {
            return lists.take(order, rows -> reader.read(list.in(), how, rows), watcher);
        } finally {
            taken.increment();
            nanos.add(System.nanoTime() - begun);
            turn.release();
        }
    }

    private void waitForATurn(Watcher watcher) throws IOException {
        long last = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        boolean crowded = turn.getQueueLength() >= MOST_WAITING;
        while (crowded || !hasItsTurn()) {
            if (crowded || System.nanoTime() - last > 0) {
                throw new Crowded("as many lists wait to be taken over as may");
            }
            watcher.waiting();
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
