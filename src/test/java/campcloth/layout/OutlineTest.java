package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

class OutlineTest {

    private static final Outline L_SHAPE = RandomPieces.outline(0, 0, 10, 0, 10, 4, 4, 4, 4, 12, 0, 12);

    private static String refusedField(double... coordinates) {
        Refused refused = catchThrowableOfType(Refused.class, () -> RandomPieces.outline(coordinates));
        assertThat(refused).as("accepted").isNotNull();
        assertThat(refused.refusals().get(0).remedy()).isNotBlank();
        return refused.refusals().get(0).field();
    }

    @Test
    void runsCounterClockwiseWhicheverWayItWasGiven() {
        List<Point> reversed = new ArrayList<>(L_SHAPE.points());
        Collections.reverse(reversed);
        assertThat(Outline.of(reversed).areaCm2()).isCloseTo(72, within(1e-12));
        assertThat(L_SHAPE.areaCm2()).isCloseTo(72, within(1e-12));
    }

    @Test
    void repeatedPointsAreDropped() {
        assertThat(RandomPieces.outline(0, 0, 0, 0, 5, 0, 5, 0, 5, 5, 0, 5, 0, 0)
                        .points())
                .hasSize(4);
    }

    @Test
    void turnedAndMirroredKeepAreaAndBox() {
        for (Outline changed : List.of(L_SHAPE.turned(), L_SHAPE.mirrored(), L_SHAPE.movedTo(3, -4))) {
            assertThat(changed.areaCm2()).isCloseTo(72, within(1e-9));
            assertThat(changed.widthCm()).isCloseTo(10, within(1e-9));
            assertThat(changed.heightCm()).isCloseTo(12, within(1e-9));
        }
        assertThat(L_SHAPE.turned().points()).contains(new Point(6, 0));
        assertThat(L_SHAPE.mirrored().points()).contains(new Point(6, 12)).doesNotContain(new Point(4, 12));
        assertThat(L_SHAPE.mirrored().mirrored().points()).containsExactlyInAnyOrderElementsOf(L_SHAPE.points());
    }

    @Test
    void outlinesThatMeetThemselvesAreRefused() {
        assertThat(refusedField(0, 0, 10, 10, 10, 0, 0, 10)).isEqualTo("outlineCm");
        assertThat(refusedField(0, 0, 10, 0, 10, 10, 5, 0, 0, 10)).isEqualTo("outlineCm");
        assertThat(refusedField(0, 0, 10, 0, 5, 0, 5, 10)).isEqualTo("outlineCm");
        assertThat(refusedField(0, 0, 10, 0, 10, 10, 0, 10, 0, 0, 10, 0, 10, 10, 0, 10))
                .isEqualTo("outlineCm");
        assertThat(refusedField(0, 0, 4, 4, 8, 0, 8, 8, 4, 4, 0, 8)).isEqualTo("outlineCm");
    }

    @Test
    void outlinesWithoutAreaAreRefused() {
        assertThat(refusedField()).isEqualTo("outlineCm");
        assertThat(refusedField(1, 1, 2, 2)).isEqualTo("outlineCm");
        assertThat(refusedField(1, 1, 2, 2, 1, 1)).isEqualTo("outlineCm");
        assertThat(refusedField(0, 0, 5, 5, 10, 10)).isEqualTo("outlineCm");
        assertThat(refusedField(0, 0, 0.001, 0, 0, 0.001)).isEqualTo("outlineCm");
    }

    @Test
    void numbersThatAreNoLengthsAreRefused() {
        assertThat(refusedField(0, 0, Double.NaN, 0, 5, 5)).isEqualTo("outlineCm[1]");
        assertThat(refusedField(0, 0, 5, 0, 5, Double.POSITIVE_INFINITY)).isEqualTo("outlineCm[2]");
        assertThat(refusedField(0, 0, 1e9, 0, 5, 5)).isEqualTo("outlineCm[1]");
    }

    @Test
    void tooManyPointsAreRefused() {
        assertThat(refusedField(new double[20_002])).isEqualTo("outlineCm");
    }

    @Test
    void simpleIsWhatTheGeometryLibraryCallsSimple() {
        int crossing = 0;
        for (long seed = 1; seed <= 2000; seed++) {
            RandomPieces random = new RandomPieces(seed);
            double[] coordinates = new double[2 * (3 + random.random().nextInt(5))];
            for (int i = 0; i < coordinates.length; i++) {
                coordinates[i] = random.random().nextInt(9);
            }
            boolean simple = isSimple(coordinates);
            crossing += simple ? 0 : 1;
            boolean accepted = catchThrowableOfType(Refused.class, () -> RandomPieces.outline(coordinates)) == null;
            assertThat(accepted).as("seed " + seed).isEqualTo(simple);
        }
        assertThat(crossing).isBetween(200, 1900);
    }

    private static boolean isSimple(double[] coordinates) {
        org.locationtech.jts.geom.Coordinate[] ring =
                new org.locationtech.jts.geom.Coordinate[coordinates.length / 2 + 1];
        for (int i = 0; i < ring.length; i++) {
            int at = 2 * (i % (ring.length - 1));
            ring[i] = new org.locationtech.jts.geom.Coordinate(coordinates[at], coordinates[at + 1]);
        }
        Geometry polygon = new org.locationtech.jts.geom.GeometryFactory().createPolygon(ring);
        return polygon.isValid() && polygon.getArea() > 0;
    }

    @Test
    void sharedAreaAgreesWithTheGeometryLibrary() {
        for (long seed = 1; seed <= 1000; seed++) {
            RandomPieces random = new RandomPieces(seed);
            Outline one = random.outline(80);
            Outline other = random.outline(80).movedTo(random.between(-40, 60), random.between(-40, 60));
            double shared = LayoutCheck.polygon(one)
                    .intersection(LayoutCheck.polygon(other))
                    .getArea();
            assertThat(Overlap.areaCm2(one, other)).as("seed " + seed).isCloseTo(shared, within(1e-8));
        }
    }
}
