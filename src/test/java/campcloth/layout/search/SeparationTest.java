package campcloth.layout.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class SeparationTest {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final double WIDTH = 100;
    private static final double TOUCHING_CM2 = 1e-5;

    /** Triangles, slanted quadrilaterals and hooks, some of them twice, each as it is and turned. */
    private static List<StripPacking.Item> items(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<StripPacking.Item> items = new ArrayList<>();
        for (int i = 0; i < 6 + seed % 7; i++) {
            double w = 10 + 50 * random.nextDouble();
            double h = 10 + 60 * random.nextDouble();
            double part = 0.2 + 0.6 * random.nextDouble();
            StripPacking.Item item = switch (random.nextInt(3)) {
                case 0 -> item(new double[] {0, w, part * w}, new double[] {0, 0, h}, w, h);
                case 1 -> item(new double[] {0, w, w * part, 0}, new double[] {0, h / 4, h, h}, w, h);
                default ->
                    item(
                            new double[] {0, w, w, part * w, part * w, 0},
                            new double[] {0, 0, part * h, part * h, h, h},
                            w,
                            h);
            };
            for (int copy = 0; copy <= random.nextInt(2); copy++) {
                items.add(item);
            }
        }
        return items;
    }

    private static StripPacking.Item item(double[] x, double[] y, double width, double height) {
        double[] turnedX = new double[x.length];
        double[] turnedY = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            turnedX[i] = width - x[i];
            turnedY[i] = height - y[i];
        }
        return new StripPacking.Item(List.of(Ring.of(x, y), Ring.of(turnedX, turnedY)));
    }

    @Test
    void separatedLayoutIsNeverLongerThanItsStartNorOverlaps() {
        int shorter = 0;
        for (long seed = 1; seed <= 25; seed++) {
            List<StripPacking.Item> items = items(seed);
            ItemKinds kinds = new ItemKinds(items);
            double gap = seed % 4 == 0 ? 0.5 : 0;
            Work work = new Work(0.06);
            ForbiddenSpots forbidden = new ForbiddenSpots(kinds.shapes(), gap, work);
            StripPacking.Spot[] start = new OrderSearch(WIDTH, forbidden, 0, kinds, work, 0.05, seed).best();
            Separation separation = new Separation(WIDTH, 0, kinds, forbidden, work, seed);
            separation.begin(start);
            separation.search(1);
            double before = length(items, List.of(start));
            double after = length(items, List.of(separation.best()));
            assertThat(after).as("seed " + seed).isLessThanOrEqualTo(before);
            assertThat(separation.bestLength()).as("seed " + seed).isEqualTo(after);
            holds(items, List.of(separation.best()), gap, "seed " + seed);
            shorter += after < before - 0.01 ? 1 : 0;
        }
        assertThat(shorter).isGreaterThan(5);
    }

    @Test
    void twoWorkersGiveTheSameLayoutForASeed() {
        List<StripPacking.Item> items = items(6);
        List<StripPacking.Spot> first = spots(items, 3, Watch.NONE);
        assertThat(spots(items, 3, Watch.NONE)).isEqualTo(first);
        holds(items, first, 0, "two workers");
    }

    @Test
    void whoeverLooksOnIsToldOfEveryBetterLengthDownToTheBest() {
        List<StripPacking.Item> items = items(9);
        List<Double> told = new ArrayList<>();
        List<StripPacking.Spot> spots = spots(items, 4, new Watch() {
            @Override
            public void better(double length) {
                told.add(length);
            }

            @Override
            public boolean isStopped() {
                return false;
            }
        });
        assertThat(told).isSortedAccordingTo((a, b) -> Double.compare(b, a)).doesNotHaveDuplicates();
        assertThat(told.get(told.size() - 1)).isEqualTo(length(items, spots));
    }

    /** An effort that two workers share. */
    private static List<StripPacking.Spot> spots(List<StripPacking.Item> items, long seed, Watch watch) {
        return StripPacking.spots(WIDTH, 0, 0, items, 0.3, seed, watch);
    }

    private static double length(List<StripPacking.Item> items, List<StripPacking.Spot> spots) {
        double length = 0;
        for (int i = 0; i < items.size(); i++) {
            StripPacking.Spot spot = spots.get(i);
            length = Math.max(length, spot.y() + items.get(i).ways().get(spot.way()).high);
        }
        return length;
    }

    private static void holds(List<StripPacking.Item> items, List<StripPacking.Spot> spots, double gap, String story) {
        List<Geometry> laid = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Geometry one = laid(items.get(i).ways().get(spots.get(i).way()), spots.get(i));
            assertThat(one.getEnvelopeInternal().getMinX()).as(story).isGreaterThan(-1e-7);
            assertThat(one.getEnvelopeInternal().getMinY()).as(story).isGreaterThan(-1e-7);
            assertThat(one.getEnvelopeInternal().getMaxX()).as(story).isLessThan(WIDTH + 1e-7);
            for (Geometry other : laid) {
                assertThat(one.intersection(other).getArea()).as(story).isLessThan(TOUCHING_CM2);
                assertThat(one.distance(other)).as(story).isGreaterThan(gap - 1e-6);
            }
            laid.add(one);
        }
    }

    private static Geometry laid(Ring ring, StripPacking.Spot spot) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            corners[i] = new Coordinate(ring.x[i % ring.size()] + spot.x(), ring.y[i % ring.size()] + spot.y());
        }
        return GEOMETRY.createPolygon(corners);
    }
}
