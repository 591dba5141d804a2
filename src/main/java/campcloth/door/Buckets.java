package campcloth.door;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How often somebody may ask: a bucket each that fills evenly over a minute. A bounded number is kept; the one that was not asked for longest
 * goes first, and starts full when it is needed again.
 */
final class Buckets {

    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final int perMinute;
    private final TimeMeter time;
    private final Map<String, Bucket> buckets;

    Buckets(int perMinute, int most, TimeMeter time) {
        this.perMinute = perMinute;
        this.time = time;
        this.buckets = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
                return size() > most;
            }
        };
    }

    /** Takes one out of somebody's bucket; how long to wait where it is empty. */
    Optional<Duration> take(String whose) {
        ConsumptionProbe probe = bucket(whose).tryConsumeAndReturnRemaining(1);
        return probe.isConsumed() ? Optional.empty() : Optional.of(Duration.ofNanos(probe.getNanosToWaitForRefill()));
    }

    int size() {
        synchronized (buckets) {
            return buckets.size();
        }
    }

    private Bucket bucket(String whose) {
        synchronized (buckets) {
            return buckets.computeIfAbsent(
                    whose,
                    one -> Bucket.builder()
                            .addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, MINUTE))
                            .withCustomTimePrecision(time)
                            .build());
        }
    }
}
