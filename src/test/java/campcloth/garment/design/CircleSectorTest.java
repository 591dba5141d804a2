package campcloth.garment.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Surface;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

class CircleSectorTest {

    @ParameterizedTest
    @CsvSource({"1, 25.46", "2, 12.73", "3, 8.49", "4, 6.37"})
    void neckOfFortyCentimetresHasTheRadiusOfItsAngle(int quarters, double radiusCm) {
        // r = 40 / (quarters x pi / 2)
        CircleSector sector =
                CircleSector.edgeOnGrain(40 / (quarters * Math.PI / 2), 130, Math.min(Math.PI, quarters * Math.PI / 2));
        assertThat(sector.innerCm()).isCloseTo(radiusCm, within(0.005));
    }

    @Test
    void areaArcsAndSectionsAreThoseOfTheShape() {
        SplittableRandom random = new SplittableRandom(21);
        for (int round = 0; round < 100; round++) {
            CircleSector sector = draw(random);
            Polygon shape = Shapes.sector(sector);
            assertThat(sector.areaCm2()).isCloseTo(shape.getArea(), within(0.05));
            assertThat(sector.outerArcCm() + sector.innerArcCm() + 2 * sector.lengthCm())
                    .isCloseTo(shape.getLength(), within(0.01));
            assertThat(sector.heightCm()).isCloseTo(shape.getEnvelopeInternal().getHeight(), within(0.01));
            double x = random.nextDouble(-sector.outerCm(), sector.outerCm());
            assertThat(sector.sectionCm(x))
                    .as("round %d of seed 21: %s at %s", round, sector, x)
                    .isCloseTo(Shapes.sectionCm(shape, x), within(0.5));
        }
    }

    @Test
    void cutIsNeverSmallerThanTheSectorWithItsAllowancesAndHardlyGreater() {
        SplittableRandom random = new SplittableRandom(22);
        for (int round = 0; round < 100; round++) {
            CircleSector sector = draw(random);
            double hem = random.nextDouble(0, 6);
            double neck = random.nextDouble(0, 1);
            double edge = random.nextDouble(0, 3);
            SewnCloth cloth = cloth(random.nextDouble(-3, 15), random.nextDouble(-3, 15));
            List<Point> corners = new CutSector(sector, cloth, hem, neck, edge).corners();
            Polygon cut = Shapes.polygon(corners);
            String which = "round " + round + " of seed 22: " + sector;
            assertThat(cut.isValid()).as(which).isTrue();
            assertThat(corners.size()).as(which).isLessThan(140);

            Geometry sewn = Shapes.scaled(Shapes.sector(sector), cloth.acrossCm(1), cloth.alongCm(1));
            assertThat(sewn.difference(cut).getArea()).as(which).isLessThan(1e-3);
            Geometry inner = sewn.buffer(Math.min(hem, Math.min(neck, edge)), 32);
            assertThat(inner.difference(cut).getArea()).as(which).isLessThan(0.05);
            // nowhere farther out than the greatest allowance and the chain of cuts
            double most = Math.max(hem, Math.max(neck, edge));
            Geometry reach = sewn.buffer(most * Math.sqrt(2) + 2 * CutArc.MOST_OFF_CM + 0.01, 32);
            assertThat(cut.difference(reach).getArea()).as(which).isLessThan(0.5);
        }
    }

    @Test
    void allowancesAreWhatWasAskedFor() {
        CircleSector sector = CircleSector.edgeOnGrain(14, 129, Math.PI);
        Polygon cut = Shapes.polygon(new CutSector(sector, cloth(0, 0), 3, 1, 2).corners());
        // half ring from 13 to 132 cm and a strip of 2 cm along both straight edges, by its definition
        double half = Math.PI / 2 * (132.0 * 132 - 13 * 13);
        assertThat(cut.getArea())
                .isBetween(
                        half + 2 * 2 * (132 - 13) - 1, half + 2 * 2 * (132 - 13) + Math.PI * 132 * CutArc.MOST_OFF_CM);
        assertThat(cut.getEnvelopeInternal().getMinX()).isCloseTo(-2, within(1e-9));
        assertThat(cut.getEnvelopeInternal().getMaxX()).isBetween(132.0, 132 + CutArc.MOST_OFF_CM + 1e-9);
        Polygon hemCircle = Shapes.sector(CircleSector.edgeOnGrain(13, 132, Math.PI));
        assertThat(hemCircle.difference(cut).getArea()).isLessThan(1e-3);
        assertThat(Outline.of(new CutSector(sector, cloth(0, 0), 3, 1, 2).corners())
                        .points())
                .hasSizeLessThan(90);
    }

    static CircleSector draw(SplittableRandom random) {
        double angle = random.nextInt(4) == 0 ? Math.PI : random.nextDouble(0.4, Math.PI);
        double inner = random.nextDouble(6, 30);
        double outer = inner + random.nextDouble(30, 150);
        return random.nextBoolean()
                ? CircleSector.edgeOnGrain(inner, outer, angle)
                : CircleSector.middleOnGrain(inner, outer, angle);
    }

    static SewnCloth cloth(double warpPercent, double weftPercent) {
        return new SewnCloth(
                200,
                0.5,
                Surface.PLAIN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                warpPercent,
                weftPercent,
                140);
    }
}
