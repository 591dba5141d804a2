package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.layout.Progress;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** A plan whose search is ended holds all the same, of what was found until then. */
class StoppedPlanTest {

    private static final double SECONDS_A_LAYOUT = 120;

    @Test
    void endsAllItsSearchesAndIsWhole() {
        CuttingOrder order = new CuttingOrder(
                Orders.washed(110, 5, 3),
                List.of(Orders.tunic(126), Orders.tunic(112, 80), Orders.tunic(140, 120)),
                Optional.empty(),
                Fold.ANY,
                10);
        AfterTheFirst progress = new AfterTheFirst();
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long begun = threads.getCurrentThreadCpuTime();
        CuttingPlan plan = new CuttingPlanner(SECONDS_A_LAYOUT).plan(order, progress);
        assertThat(threads.getCurrentThreadCpuTime() - begun)
                .as("one layout alone would take this thread all of its seconds")
                .isLessThan(TimeUnit.SECONDS.toNanos((long) SECONDS_A_LAYOUT));
        assertThat(progress.heard).isPositive();
        PlacedPieces.assertHold(plan, "stopped");
    }

    private static final class AfterTheFirst implements Progress {

        private volatile int heard;

        @Override
        public void better(double lengthCm, double usedPercent) {
            heard++;
        }

        @Override
        public boolean isStopped() {
            return heard > 0;
        }
    }
}
