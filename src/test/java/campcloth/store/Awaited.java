package campcloth.store;

import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.concurrent.Callable;

/** What comes about by itself, after a while that hangs on how busy the machine is: asked for again and again, and long enough. */
final class Awaited {

    static final Duration PATIENCE = Duration.ofMinutes(3);

    private Awaited() {}

    static void until(Callable<Boolean> there) {
        await().pollInSameThread()
                .pollDelay(Duration.ZERO)
                .pollInterval(Duration.ofMillis(10))
                .atMost(PATIENCE)
                .until(there);
    }
}
