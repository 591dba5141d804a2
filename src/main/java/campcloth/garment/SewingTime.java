package campcloth.garment;

import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.List;
import java.util.stream.Stream;

/**
 * About how long one garment takes to cut and sew, as a range from a practised to a slow pair of hands: metres of outline,
 * seam, raw edge and hem, each times the minutes that a metre takes with its pinning and pressing, and a try-on. All speeds
 * are project choices after common practice, no source. It leaves out washing, drying, unpicking, and what only a
 * decoration needs.
 *
 * @param by how it is sewn
 * @param parts the parts of the work
 */
public record SewingTime(SewnBy by, List<Part> parts) {

    /** Where the speeds come from. */
    public static final String BASIS = "common practice, no source; the minutes a metre are a project choice";

    /**
     * A part of the work.
     *
     * @param work what is done
     * @param metres of what is cut or sewn; 0 where the time does not go by length
     * @param leastMinutes for practised hands
     * @param mostMinutes for a beginner
     */
    public record Part(String work, double metres, double leastMinutes, double mostMinutes) {}

    /** Minutes that a metre takes. */
    private record Pace(double least, double most) {

        Part over(String work, double cm) {
            return new Part(work, cm / 100, cm / 100 * least, cm / 100 * most);
        }
    }

    /** Chalk, cut, mark. */
    private static final Pace CUTTING = new Pace(1.5, 4);

    private static final double TRY_ON_LEAST = 20;
    private static final double TRY_ON_MOST = 60;

    public SewingTime {
        parts = List.copyOf(parts);
    }

    /** The time for one garment. */
    public static SewingTime of(Garment garment, SewnBy by) {
        boolean hand = by == SewnBy.HAND;
        Pace seam = hand ? new Pace(25, 60) : new Pace(4, 10);
        Pace neatening = hand ? new Pace(15, 35) : new Pace(2, 5);
        Pace hem = hand ? new Pace(25, 60) : new Pace(8, 20);
        return new SewingTime(
                by,
                List.of(
                        CUTTING.over("chalk and cut", outlineCm(garment)),
                        seam.over("sew and press the seams", seamsCm(garment)),
                        neatening.over("neaten the raw edges", neatenedCm(garment)),
                        hem.over("fold, press and sew the hems", hemsCm(garment)),
                        new Part("try on and alter", 0, TRY_ON_LEAST, TRY_ON_MOST)));
    }

    public double leastHours() {
        return parts.stream().mapToDouble(Part::leastMinutes).sum() / 60;
    }

    public double mostHours() {
        return parts.stream().mapToDouble(Part::mostMinutes).sum() / 60;
    }

    private static double outlineCm(Garment garment) {
        return Stream.concat(garment.pieces().stream(), garment.smallPieces().stream())
                .mapToDouble(piece -> piece.count() * roundCm(piece.outline()))
                .sum();
    }

    private static double roundCm(Outline outline) {
        List<Point> points = outline.points();
        double cm = 0;
        for (int i = 0; i < points.size(); i++) {
            Point from = points.get(i);
            Point to = points.get((i + 1) % points.size());
            cm += Math.hypot(to.xCm() - from.xCm(), to.yCm() - from.yCm());
        }
        return cm;
    }

    private static double seamsCm(Garment garment) {
        return garment.sewing().seams().stream().mapToDouble(Seam::lengthCm).sum();
    }

    private static double neatenedCm(Garment garment) {
        return garment.sewing().seams().stream()
                        .mapToDouble(seam -> seam.neatenedEdges() * seam.lengthCm())
                        .sum()
                + garment.sewing().hems().stream()
                        .filter(Hem::neatened)
                        .mapToDouble(Hem::edgeLengthCm)
                        .sum();
    }

    private static double hemsCm(Garment garment) {
        return garment.sewing().hems().stream().mapToDouble(Hem::edgeLengthCm).sum();
    }
}
