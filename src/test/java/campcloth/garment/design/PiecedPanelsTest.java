package campcloth.garment.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Panels by a geometry library: without their seam allowances they are the shape, no more and no less. */
class PiecedPanelsTest {

    private static final double FAR_CM = 1000;

    @Test
    void panelsWithoutTheirSeamAllowancesMakeTheShape() {
        SplittableRandom random = new SplittableRandom(31);
        int pieced = 0;
        for (int round = 0; round < 200; round++) {
            double angle = random.nextInt(3) == 0 ? Math.PI : random.nextDouble(0.6, Math.PI);
            double inner = random.nextDouble(6, 28);
            double outer = inner + random.nextDouble(30, 150);
            boolean middle = random.nextBoolean();
            CircleSector sector = middle
                    ? CircleSector.middleOnGrain(inner, outer, angle)
                    : CircleSector.edgeOnGrain(inner, outer, angle);
            double usable = random.nextDouble(40, 160);
            double seam = random.nextDouble(1.2, 3.5);
            List<Point> corners = new CutSector(sector, CircleSectorTest.cloth(4, 3), 3, 1, seam).corners();
            PiecedPanels panels = middle
                    ? PiecedPanels.fromTheMiddle(corners, usable, seam, inner)
                    : PiecedPanels.fromTheLeft(corners, usable, seam, inner);
            String which = "round " + round + " of seed 31: " + sector + " on " + usable;
            Geometry sewn = Shapes.scaled(
                    Shapes.sector(sector),
                    CircleSectorTest.cloth(4, 3).acrossCm(1),
                    CircleSectorTest.cloth(4, 3).alongCm(1));
            assertMakesTheShape(Shapes.polygon(corners), sewn, panels, usable, seam, which);
            // washed, the sewn panels have the sector's area by its formula
            assertThat(sewn.getArea() * 0.96 * 0.97).as(which).isCloseTo(sector.areaCm2(), within(0.1));
            pieced += panels.panels().size() > 1 ? 1 : 0;
        }
        assertThat(pieced).isGreaterThan(50);
    }

    private static void assertMakesTheShape(
            Polygon shape, Geometry sewn, PiecedPanels panels, double usable, double seam, String which) {
        List<Geometry> finished = new ArrayList<>();
        double sum = 0;
        double finishedCm2 = 0;
        for (PiecedPanels.Panel panel : panels.panels()) {
            Geometry cut = inTheShape(shape, panel, seam);
            assertThat(cut.isValid()).as(which).isTrue();
            assertThat(panel.outline().widthCm()).as(which).isLessThanOrEqualTo(usable + 1e-6);
            Geometry without = cut.intersection(
                    Shapes.strip(panel.leftCm().orElse(-FAR_CM), panel.rightCm().orElse(FAR_CM)));
            finished.add(without);
            int copies = panel.twin() ? 2 : 1;
            finishedCm2 += copies * without.intersection(sewn).getArea();
            sum += without.getArea();
            if (panel.twin()) {
                finished.add(
                        AffineTransformation.reflectionInstance(0, -1, 0, 1).transform(without));
                sum += without.getArea();
            }
        }
        Geometry union = UnaryUnionOp.union(finished);
        assertThat(union.symDifference(shape).getArea()).as(which).isLessThan(1e-3);
        assertThat(finishedCm2).as("%s: without all allowances", which).isCloseTo(sewn.getArea(), within(1e-3));
        assertThat(sum).as("%s: no cloth twice", which).isCloseTo(shape.getArea(), within(1e-3));
    }

    /** A panel moved back to where it belongs; its seam allowances are then those of the shape's strip. */
    private static Geometry inTheShape(Polygon shape, PiecedPanels.Panel panel, double seam) {
        Polygon moved = Shapes.polygon(panel.outline().points());
        Geometry strip = shape.intersection(Shapes.strip(
                panel.leftCm().orElse(-FAR_CM) - seam, panel.rightCm().orElse(FAR_CM) + seam));
        double dx = strip.getEnvelopeInternal().getMinX()
                - moved.getEnvelopeInternal().getMinX();
        double dy = strip.getEnvelopeInternal().getMinY()
                - moved.getEnvelopeInternal().getMinY();
        Geometry placed = AffineTransformation.translationInstance(dx, dy).transform(moved);
        assertThat(placed.symDifference(strip).getArea()).isLessThan(1e-3);
        return placed;
    }
}
