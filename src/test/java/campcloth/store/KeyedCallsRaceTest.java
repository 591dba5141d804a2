package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.CallAnswer;
import campcloth.access.KeyedCall;
import campcloth.access.KeyedCalls.Start;
import campcloth.access.TakenOver;
import campcloth.access.Turn;
import campcloth.event.KeptEvent;
import campcloth.job.Pace;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.springframework.dao.DataIntegrityViolationException;

/**
 * Instances that take calls from each other all the time, the living ones' as well, since claims run out in no time and nobody holds them
 * on: however slow each is and wherever it breaks off, all who are answered hear of one thing, which is there once; and where it is
 * removed then, it stays removed.
 */
class KeyedCallsRaceTest extends KeyedCallsBench {

    private static final long SEED = 14;
    private static final int CALLS = 40;
    private static final int CLIENTS = 4;
    private static final Duration NO_TIME = Duration.ofMillis(5);
    private static final Pace HASTY = new Pace(NO_TIME, NO_TIME, NO_TIME, Duration.ZERO, Duration.ZERO);

    /** Long enough for others to make the thing, answer, and have it removed. */
    private static final int VERY_SLOW_MS = 200;

    private final AtomicInteger takenOver = new AtomicInteger();

    @Test
    @Timeout(value = 15, unit = TimeUnit.MINUTES)
    void eachCallMakesOneThingWhoeverTakesItFromWhom() throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Instance> instances = new ArrayList<>();
        for (int i = 0; i < CLIENTS; i++) {
            instances.add(instance(HASTY));
        }
        ExecutorService pool = Executors.newFixedThreadPool(CLIENTS);
        try {
            for (int i = 0; i < CALLS; i++) {
                KeyedCall call = call();
                boolean removed = random.nextBoolean();
                AtomicBoolean toRemove = new AtomicBoolean(removed);
                List<Callable<String>> clients = new ArrayList<>();
                for (Instance instance : instances) {
                    SplittableRandom own = random.split();
                    clients.add(() -> answered(instance, call, own, toRemove));
                }
                List<String> ids = new ArrayList<>();
                for (Future<String> client : pool.invokeAll(clients)) {
                    ids.add(client.get());
                }
                assertThat(ids.stream().distinct())
                        .as("seed %d, call %d", SEED, i)
                        .hasSize(1);
                assertThat(number(call)).as("seed %d, call %d", SEED, i).isEqualTo(removed ? 0 : 1);
            }
        } finally {
            pool.shutdown();
        }
        assertThat(takenOver)
                .as("takings over, without which this shows nothing")
                .hasPositiveValue();
    }

    /** Sends until the kept answer comes back; the first to get it removes the thing, where it is to be removed. */
    private String answered(Instance instance, KeyedCall call, SplittableRandom random, AtomicBoolean toRemove)
            throws InterruptedException {
        while (true) {
            Start start = instance.calls().begin(call);
            if (start instanceof Start.Answered answer) {
                String id = answer.answer().body();
                if (toRemove.getAndSet(false)) {
                    events.remove(id, events.byId(id).orElseThrow().version());
                }
                return id;
            }
            if (start instanceof Start.First first) {
                work(instance, call, first.turn(), random);
            }
            Thread.sleep(random.nextInt(10));
        }
    }

    /** Slow at times; breaks off at times, before or after; finds at times that nothing can be made. */
    private void work(Instance instance, KeyedCall call, Turn turn, SplittableRandom random)
            throws InterruptedException {
        int fate = random.nextInt(10);
        Thread.sleep(fate > 7 ? VERY_SLOW_MS : random.nextInt(20));
        if (fate == 0) {
            return;
        }
        if (fate == 1) {
            instance.calls().forget(call, turn);
            return;
        }
        try {
            KeptEvent event = ids.under(turn, () -> events.add(event(call.key())));
            Thread.sleep(random.nextInt(10));
            if (fate > 3) {
                instance.calls().answered(call, turn, new CallAnswer(201, Map.of(), event.id()));
            }
        } catch (TakenOver | DataIntegrityViolationException lost) {
            takenOver.incrementAndGet();
            instance.calls().forget(call, turn);
        }
    }

    private long number(KeyedCall call) {
        Long found = sql.queryForObject("select count(*) from event where body ->> 'name' = ?", Long.class, call.key());
        return found == null ? -1 : found;
    }
}
