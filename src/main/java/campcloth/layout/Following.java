package campcloth.layout;

import campcloth.layout.search.Watch;
import java.util.function.DoubleUnaryOperator;

/** Passes on only what is better than all before, with what it uses; from any thread, one at a time. */
final class Following implements Watch {

    private final Progress progress;
    private final DoubleUnaryOperator usedPercent;
    private double least = Double.POSITIVE_INFINITY;

    Following(Progress progress, DoubleUnaryOperator usedPercent) {
        this.progress = progress;
        this.usedPercent = usedPercent;
    }

    @Override
    public synchronized void better(double length) {
        if (length < least) {
            least = length;
            progress.better(length, usedPercent.applyAsDouble(length));
        }
    }

    @Override
    public synchronized boolean isStopped() {
        return progress.isStopped();
    }
}
