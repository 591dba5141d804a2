package campcloth.garment.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** One allowance all round is what a geometry library draws with mitred corners. */
class CutPolygonTest {

    /** Simplifies a little of itself. */
    private static final BufferParameters MITRED =
            new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 20);

    @Test
    void sameAllowanceAllRoundIsAMitredBuffer() {
        SplittableRandom random = new SplittableRandom(41);
        for (int round = 0; round < 200; round++) {
            double allowance = random.nextDouble(0.5, 3);
            List<Point> corners = new ArrayList<>();
            CutPolygon cut = new CutPolygon();
            for (int i = 0; i < 8; i++) {
                double direction = i * Math.PI / 4;
                double radius = random.nextDouble(25, 40);
                Point corner = new Point(radius * Math.cos(direction), radius * Math.sin(direction));
                corners.add(corner);
                cut.corner(corner.xCm(), corner.yCm(), allowance);
            }
            double expected = BufferOp.bufferOp(Shapes.polygon(corners), allowance, MITRED)
                    .getArea();
            assertThat(cut.outline().areaCm2())
                    .as("round %d of seed 41", round)
                    .isCloseTo(expected, within(1e-4 * expected));
        }
    }

    @Test
    void stripIsCutSquareToItsSides() {
        SplittableRandom random = new SplittableRandom(42);
        for (int round = 0; round < 200; round++) {
            double hem = random.nextDouble(20, 60);
            double hip = random.nextDouble(10, hem);
            double top = random.nextDouble(8, hip);
            FlaredStrip strip =
                    new FlaredStrip(List.of(new Point(hem / 2, 0), new Point(hip / 2, 70), new Point(top / 2, 90)));
            double seam = random.nextDouble(1, 3);
            Outline outline = strip.outline(seam, 0, 0);
            Polygon sewn = Shapes.polygon(List.of(
                    new Point(-hem / 2, 0),
                    new Point(hem / 2, 0),
                    new Point(hip / 2, 70),
                    new Point(top / 2, 90),
                    new Point(-top / 2, 90),
                    new Point(-hip / 2, 70)));
            double expected = BufferOp.bufferOp(sewn, seam, MITRED)
                    .intersection(Shapes.strip(-1000, 1000).intersection(Shapes.level(0, 90)))
                    .getArea();
            assertThat(outline.areaCm2()).as("round %d of seed 42", round).isCloseTo(expected, within(1e-4 * expected));
            assertThat(strip.areaCm2()).isCloseTo(sewn.getArea(), within(1e-6));
        }
    }
}
