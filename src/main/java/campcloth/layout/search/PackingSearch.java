package campcloth.layout.search;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * The whole search: an order search first, then separation from what it found. Where it pays, two workers do so on threads
 * of their own, with seeds and counted work of their own; the one that is behind takes over the other's layout at fixed
 * parts of the work, so that the answer does not depend on which thread is faster.
 */
final class PackingSearch {

    /** Efforts in seconds under which one thread does the work. */
    private static final double LEAST_SECONDS_OF_TWO = 0.25;

    /** Different shapes up to which the no-fit polygons of all pairs are few enough to be at hand. */
    private static final int MOST_SHAPES = 120;

    /** Items up to which orders are so few that their search pays long. */
    private static final int FEW_ITEMS = 24;

    /** What the order search may spend: parts of the work, and seconds. */
    private static final double SHARE_OF_FEW = 0.5;

    private static final double SHARE_OF_MANY = 0.15;
    private static final double SHARE_OF_RECTANGLES = 0.1;

    /** Part of the work up to which rectangles are looked at as such. */
    private static final double RECTANGLES_UNTIL = 0.95;

    private static final double MOST_SECONDS_OF_MANY = 0.5;
    /** Parts of the work at which workers wait for each other. */
    private static final double[] MEETINGS = {0.4, 0.6, 0.8, 0.9, 1};

    private static final long SEED_STEP = 0x9E3779B97F4A7C15L;

    private final double stripWidth;
    private final double gap;
    private final double lowerBound;
    private final ItemKinds kinds;
    private final double seconds;
    private final long seed;
    private final Watch watch;
    private final boolean rectangles;

    PackingSearch(
            double stripWidth, double gap, double lowerBound, ItemKinds kinds, double seconds, long seed, Watch watch) {
        this.stripWidth = stripWidth;
        this.gap = gap;
        this.lowerBound = lowerBound;
        this.kinds = kinds;
        this.seconds = seconds;
        this.seed = seed;
        this.watch = new Shared(watch);
        this.rectangles = RectangleSearch.isFor(kinds);
    }

    private final class Worker {
        final Work work = new Work(seconds, watch);
        final ForbiddenSpots forbidden = new ForbiddenSpots(kinds.shapes(), gap, work);
        final long ownSeed;
        final Separation separation;

        Worker(int number) {
            ownSeed = seed + number * SEED_STEP;
            separation = new Separation(stripWidth, lowerBound, kinds, forbidden, work, ownSeed);
        }

        StripPacking.Spot[] ordered(double share) {
            StripPacking.Spot[] ordered =
                    new OrderSearch(stripWidth, forbidden, lowerBound, kinds, work, share, ownSeed).best();
            return rectangles
                    ? new RectangleSearch(stripWidth, gap, lowerBound, kinds, work, ownSeed)
                            .shorter(ordered, RECTANGLES_UNTIL)
                    : ordered;
        }
    }

    StripPacking.Spot[] best() {
        if (kinds.items() == 1 || kinds.shapes() > MOST_SHAPES) {
            return new OrderSearch(stripWidth, gap, lowerBound, kinds, new Work(seconds, watch), seed).best();
        }
        List<Worker> workers = IntStream.range(0, seconds < LEAST_SECONDS_OF_TWO ? 1 : 2)
                .mapToObj(Worker::new)
                .toList();
        double orderShare = orderShare();
        together(workers, worker -> worker.separation.begin(worker.ordered(orderShare)));
        for (double meeting : MEETINGS) {
            Worker ahead = ahead(workers);
            for (Worker worker : workers) {
                if (worker.separation.bestLength() > ahead.separation.bestLength()) {
                    worker.separation.begin(ahead.separation.best());
                }
            }
            together(workers, worker -> worker.separation.search(meeting));
        }
        return ahead(workers).separation.best();
    }

    private double orderShare() {
        if (rectangles) {
            return SHARE_OF_RECTANGLES;
        }
        return kinds.items() <= FEW_ITEMS ? SHARE_OF_FEW : Math.min(SHARE_OF_MANY, MOST_SECONDS_OF_MANY / seconds);
    }

    private static Worker ahead(List<Worker> workers) {
        Worker ahead = workers.get(0);
        for (Worker worker : workers) {
            if (worker.separation.bestLength() < ahead.separation.bestLength()) {
                ahead = worker;
            }
        }
        return ahead;
    }

    private static void together(List<Worker> workers, Consumer<Worker> task) {
        List<CompletableFuture<Void>> others = workers.stream()
                .skip(1)
                .map(worker -> CompletableFuture.runAsync(() -> task.accept(worker), PackingSearch::start))
                .toList();
        task.accept(workers.get(0));
        others.forEach(CompletableFuture::join);
    }

    /** On a thread of its own: a shared pool may be busy with other searches. */
    private static void start(Runnable task) {
        Thread thread = new Thread(task, "layout");
        thread.setDaemon(true);
        thread.start();
    }

    /** Tells of what is better than all that any worker found. */
    private static final class Shared implements Watch {
        private final Watch told;
        private double least = Double.POSITIVE_INFINITY;

        Shared(Watch told) {
            this.told = told;
        }

        @Override
        public synchronized void better(double length) {
            if (length < least) {
                least = length;
                told.better(length);
            }
        }

        @Override
        public boolean isStopped() {
            return told.isStopped();
        }
    }
}
