package campcloth.journey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.LongAdder;

/** What was asked, what was acknowledged and when: the client's side of the account. */
final class EnduranceLedger {

    /** A thing that was acknowledged: where it is kept, under which mark, and the name it was last acknowledged to have. */
    record Thing(String table, String mark, String path, String name) {}

    private final Map<String, Thing> acknowledged = new ConcurrentHashMap<>();
    private final Map<String, LongAdder> refused = new ConcurrentHashMap<>();
    private final List<Long> latencyMicros = Collections.synchronizedList(new ArrayList<>());
    private final List<Long> ackNanos = Collections.synchronizedList(new ArrayList<>());
    final LongAdder requests = new LongAdder();
    final LongAdder retried = new LongAdder();
    final LongAdder wrongReads = new LongAdder();
    final AtomicLong edits = new AtomicLong();

    void acknowledged(Thing thing) {
        acknowledged.put(thing.mark(), thing);
        ackNanos.add(System.nanoTime());
    }

    void answered(long micros) {
        latencyMicros.add(micros);
    }

    void refused(String status) {
        refused.computeIfAbsent(status, key -> new LongAdder()).increment();
    }

    Map<String, Thing> things() {
        return acknowledged;
    }

    /** The first acknowledgement after a moment, in milliseconds from then; below 0 where there was none yet. */
    long millisToFirstAfter(long nanos) {
        synchronized (ackNanos) {
            for (int i = ackNanos.size() - 1; i >= 0; i--) {
                if (ackNanos.get(i) <= nanos) {
                    return i + 1 < ackNanos.size() ? (ackNanos.get(i + 1) - nanos) / 1_000_000 : -1;
                }
            }
            return ackNanos.isEmpty() ? -1 : (ackNanos.get(0) - nanos) / 1_000_000;
        }
    }

    private long longestGapMillis() {
        long longest = 0;
        synchronized (ackNanos) {
            for (int i = 1; i < ackNanos.size(); i++) {
                longest = Math.max(longest, ackNanos.get(i) - ackNanos.get(i - 1));
            }
        }
        return longest / 1_000_000;
    }

    private double millisAt(double share) {
        List<Long> sorted;
        synchronized (latencyMicros) {
            sorted = new ArrayList<>(latencyMicros);
        }
        Collections.sort(sorted);
        return sorted.isEmpty()
                ? 0
                : sorted.get((int) Math.min(sorted.size() - 1L, (long) (sorted.size() * share))) / 1000.0;
    }

    void print() {
        System.out.printf(
                "requests %d, writes acknowledged %d (things %d, edits %d), retried %d%n",
                requests.sum(), ackNanos.size(), acknowledged.size(), edits.get(), retried.sum());
        System.out.println("refused or failed, by status: " + new TreeMap<>(refused));
        System.out.printf(
                "answers p50 %.1f ms, p99 %.1f ms; longest time without an acknowledged write %d ms%n",
                millisAt(0.5), millisAt(0.99), longestGapMillis());
    }
}
