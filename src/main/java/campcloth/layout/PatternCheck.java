package campcloth.layout;

import java.util.List;
import java.util.Optional;

/** Whether match points meet the pattern, and no piece lies against it; worked out from the layout alone. */
final class PatternCheck {

    private static final double OFF_CM = 1e-6;

    private PatternCheck() {}

    static void addMiss(Layout layout, Placement placed, List<String> faults) {
        Optional<Repeat> known = layout.strip().repeat();
        if (known.isEmpty()) {
            return;
        }
        Repeat repeat = known.get();
        Piece piece = layout.pieceOf(placed);
        boolean over = placed.mirrored() && piece.mirrorable();
        if (placed.turned() && repeat.lengthCm().isPresent() && !repeat.sameUpsideDown()
                || placed.turned() != over && repeat.widthCm().isPresent() && !repeat.sameMirrored()) {
            faults.add(placed.piece() + " " + placed.copy() + " lies against the pattern");
        }
        piece.match()
                .ifPresent(match -> layout.matchPhases().stream()
                        .filter(phase -> phase.group().equals(match.group()))
                        .forEach(phase -> addMiss(layout, placed, piece, match, phase, faults)));
    }

    private static void addMiss(
            Layout layout, Placement placed, Piece piece, Match match, MatchPhase phase, List<String> faults) {
        Repeat repeat = layout.strip().repeat().orElseThrow();
        Outline outline = piece.outline();
        double right = outline.leftCm() + outline.widthCm() - match.at().xCm();
        double above = outline.lowCm() + outline.heightCm() - match.at().yCm();
        boolean crosswise = placed.turned() ^ placed.mirrored();
        double x = placed.xCm() + (crosswise ? right : match.at().xCm() - outline.leftCm());
        double y = placed.yCm() + (placed.turned() ? above : match.at().yCm() - outline.lowCm());
        double offX = off(
                repeat.widthCm(), x - repeat.fromSelvedgeCm() - phase.acrossCm().orElse(0.0));
        double offY = off(
                repeat.lengthCm(),
                y
                        - layout.strip().repeatFromCutCm(placed.atHand())
                        - phase.alongCm().orElse(0.0));
        if (offX > OFF_CM || offY > OFF_CM) {
            faults.add(placed.piece() + " " + placed.copy() + " misses the pattern by " + Math.max(offX, offY) + " cm");
        }
    }

    private static double off(Optional<Double> repeat, double distance) {
        return repeat.map(step -> Math.abs(distance - step * Math.rint(distance / step)))
                .orElse(0.0);
    }
}
