package campcloth.layout.search;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;

/**
 * The whole search: an order search first, then separation from what it found. Where it pays, two workers do so on threads
 * of their own, with seeds and counted work of their own; the one that is behind takes over the other's layout at fixed
 * parts of the work, so that the answer does not depend on which thread is faster.
 */
final class PackingSearch {

    /** Efforts in seconds under which one thread does the work. */
    private static final double LEAST_SECONDS_OF_TWO = 0.25;

    private static final int MOST_SHAPES = 120;
    static double ORDER_SHARE = Double.parseDouble(System.getProperty("oshare", "0.15"));
    static double[] MEETINGS = {0.4, 0.6, 0.8, 0.9, 1};
    static double MOST_ORDER_SECONDS = Double.parseDouble(System.getProperty("osecs", "0.5"));
    private static final long SEED_STEP = 0x9E3779B97F4A7C15L;

    private final double stripWidth;
    private final double gap;
    private final double lowerBound;
    private final ItemKinds kinds;
    private final double seconds;
    private final long seed;

    PackingSearch(double stripWidth, double gap, double lowerBound, ItemKinds kinds, double seconds, long seed) {
        this.stripWidth = stripWidth;
        this.gap = gap;
        this.lowerBound = lowerBound;
        this.kinds = kinds;
        this.seconds = seconds;
        this.seed = seed;
    }

    private final class Worker {
        final Work work = new Work(seconds);
        final ForbiddenSpots forbidden = new ForbiddenSpots(kinds.shapes(), gap, work);
        final long ownSeed;
        Separation separation;

        Worker(int number) {
            ownSeed = seed + number * SEED_STEP;
            separation = new Separation(stripWidth, lowerBound, kinds, forbidden, work, ownSeed);
        }

        StripPacking.Spot[] ordered(double share) {
            return new OrderSearch(stripWidth, forbidden, lowerBound, kinds, work, share, ownSeed).best();
        }
    }

    StripPacking.Spot[] best() {
        boolean separates = kinds.items() > 1 && kinds.shapes() <= MOST_SHAPES;
        if (!separates) {
            return new Worker(0).ordered(1);
        }
        List<Worker> workers = IntStream.range(0, seconds < LEAST_SECONDS_OF_TWO ? 1 : 2)
                .mapToObj(Worker::new)
                .toList();
        together(workers, worker -> worker.separation.begin(worker.ordered(Math.min(ORDER_SHARE, MOST_ORDER_SECONDS / seconds))));
        for (double meeting : MEETINGS) {
            Worker ahead = ahead(workers);
            for (Worker worker : workers) {
                if (worker.separation.bestLength() > ahead.separation.bestLength()) {
                    worker.separation.begin(ahead.separation.best());
                }
            }
            together(workers, worker -> worker.separation.search(meeting));
        }
        if (Boolean.getBoolean("sep.debug")) for (Worker w : workers) System.out.println("tries " + w.separation.tries + " rounds " + w.separation.rounds + " moves " + w.separation.moves + " ok " + w.separation.oks);
        return ahead(workers).separation.best();
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

    private static void together(List<Worker> workers, java.util.function.Consumer<Worker> task) {
        List<CompletableFuture<Void>> others = workers.stream()
                .skip(1)
                .map(worker -> CompletableFuture.runAsync(() -> task.accept(worker)))
                .toList();
        task.accept(workers.get(0));
        others.forEach(CompletableFuture::join);
    }
}
