package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Checks what a layout owes to pattern, lengths at hand and edges, with a geometry library and the request alone. */
final class RulesCheck {

    private static final double SPOT_CM = 1e-6;
    /** 0.1 mm along a whole metre. */
    private static final double SHARED_CM2 = 1e-3;

    private RulesCheck() {}

    static void holds(Layout layout, Strip strip, List<Piece> pieces, String story) {
        Map<Piece, Integer> laid = new HashMap<>();
        Geometry[] shapes = new Geometry[layout.placements().size()];
        Map<String, double[]> met = new HashMap<>();
        double top = 0;
        for (int i = 0; i < shapes.length; i++) {
            Placement placed = layout.placements().get(i);
            Piece piece = pieces.stream()
                    .filter(some -> some.name().equals(placed.piece()))
                    .findFirst()
                    .orElseThrow();
            laid.merge(piece, 1, Integer::sum);
            AffineTransformation lying = lying(piece, placed);
            shapes[i] = lying.transform(LayoutCheck.polygon(piece.outline()));
            withinCloth(shapes[i].getEnvelopeInternal(), strip, placed, layout.lengthCm(), story);
            if (placed.atHand().isEmpty()) {
                top = Math.max(top, shapes[i].getEnvelopeInternal().getMaxY() + strip.edgeGapCm());
            }
            meetsPattern(piece, placed, lying, strip, met, story);
            for (int j = 0; j < i; j++) {
                if (layout.placements().get(j).atHand().equals(placed.atHand())
                        && shapes[i].getEnvelopeInternal().distance(shapes[j].getEnvelopeInternal()) <= strip.gapCm()) {
                    assertThat(shapes[i].intersection(shapes[j]).getArea())
                            .as(story)
                            .isLessThan(SHARED_CM2);
                    assertThat(shapes[i].distance(shapes[j])).as(story).isGreaterThan(strip.gapCm() - SPOT_CM);
                }
            }
        }
        pieces.forEach(piece -> assertThat(laid.get(piece)).as(story).isEqualTo(piece.count()));
        assertThat(layout.lengthCm()).as(story).isCloseTo(top, org.assertj.core.data.Offset.offset(1e-6));
        assertThat(layout.lowerBoundCm()).as(story).isLessThan(layout.lengthCm() + 1e-6);
        layout.lengthUnmatchedCm()
                .ifPresent(free ->
                        assertThat(free).as(story).isBetween(layout.lowerBoundCm() - 1e-6, layout.lengthCm() + 1e-6));
    }

    private static AffineTransformation lying(Piece piece, Placement placed) {
        Geometry drawn = LayoutCheck.polygon(piece.outline());
        AffineTransformation way = AffineTransformation.scaleInstance(
                placed.turned() != placed.mirrored() ? -1 : 1, placed.turned() ? -1 : 1);
        Envelope box = way.transform(drawn).getEnvelopeInternal();
        return way.translate(placed.xCm() - box.getMinX(), placed.yCm() - box.getMinY());
    }

    private static void withinCloth(Envelope box, Strip strip, Placement placed, double length, String story) {
        Optional<AtHand> hand = placed.atHand().map(number -> strip.atHand().get(number - 1));
        double side = strip.selvedgeCm() + strip.edgeGapCm();
        assertThat(box.getMinX()).as(story).isGreaterThan(side - SPOT_CM);
        assertThat(box.getMaxX())
                .as(story)
                .isLessThan(hand.flatMap(AtHand::widthCm).orElse(strip.widthCm()) - side + SPOT_CM);
        assertThat(box.getMinY()).as(story).isGreaterThan(strip.edgeGapCm() - SPOT_CM);
        assertThat(box.getMaxY())
                .as(story)
                .isLessThan(hand.map(AtHand::lengthCm).orElse(length) - strip.edgeGapCm() + SPOT_CM);
    }

    private static void meetsPattern(
            Piece piece,
            Placement placed,
            AffineTransformation lying,
            Strip strip,
            Map<String, double[]> met,
            String story) {
        assertThat(piece.allowsTurned(placed.turned())).as(story).isTrue();
        if (strip.repeat().isEmpty()) {
            return;
        }
        Repeat repeat = strip.repeat().get();
        if (placed.turned() && repeat.lengthCm().isPresent()) {
            assertThat(repeat.sameUpsideDown()).as(story).isTrue();
        }
        if (piece.match().isEmpty()) {
            return;
        }
        Point at = piece.match().get().at();
        Coordinate spot = lying.transform(new Coordinate(at.xCm(), at.yCm()), new Coordinate());
        double fromCut = placed.atHand()
                .flatMap(number -> strip.atHand().get(number - 1).repeatFromCutCm())
                .orElse(repeat.fromCutCm());
        double[] own = {spot.getX() - repeat.fromSelvedgeCm(), spot.getY() - fromCut};
        double[] first = met.computeIfAbsent(piece.match().get().group(), group -> own);
        repeat.widthCm().ifPresent(step -> onStep(own[0] - first[0], step, story));
        repeat.lengthCm().ifPresent(step -> onStep(own[1] - first[1], step, story));
        for (MatchPhase phase : repeat.phases()) {
            if (phase.group().equals(piece.match().get().group())) {
                phase.alongCm()
                        .ifPresent(y -> onStep(own[1] - y, repeat.lengthCm().orElseThrow(), story));
            }
        }
        if (placed.turned()) {
            repeat.lengthCm().ifPresent(step -> onStep(own[1], step / 2, story));
        }
    }

    private static void onStep(double distance, double step, String story) {
        assertThat(Math.abs(distance - step * Math.rint(distance / step)))
                .as(story)
                .isLessThan(1e-5);
    }
}
