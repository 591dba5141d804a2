package campcloth.garment.design;

import campcloth.garment.GarmentPiece;
import campcloth.garment.Hem;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The pieces of loose trousers with their allowances (common practice, no source). Each leg is a tube whose one seam is the
 * inseam, cut in one piece or with a side seam in two. With a gusset the crotch is a square set on its corner between straight
 * legs; without, each leg runs out into the crotch in a curve, a twentieth of the finished width in front and a tenth behind
 * (project choice). At the top {@value #CASING_CM} cm are turned in for the cord.
 *
 * <p>Cloth that was not washed before cutting: across cut wider, along the residual is part of the hem's allowance.
 *
 * @param finishedCm finished width round waist and hip
 */
record TrouserCut(TrouserSizes sizes, TrouserChoice choice, SewnCloth cloth, Hem legHem, double finishedCm) {

    static final double CASING_CM = 4;

    private static final double FRONT_SHARE = 1 / 20.0;
    private static final double BACK_SHARE = 1 / 10.0;
    private static final double CURVE_HEIGHT_SHARE = 1 / 3.0;
    private static final int CURVE_STEPS = 6;

    double seamCm() {
        return cloth.seamAllowanceCm(choice.seamCm());
    }

    static double extensionCm(double finishedCm, boolean back) {
        return finishedCm * (back ? BACK_SHARE : FRONT_SHARE);
    }

    /** Round the leg just below the crotch, finished. */
    static double legRoundCm(double finishedCm, double gussetCm) {
        return finishedCm / 2
                + (gussetCm > 0 ? gussetCm : extensionCm(finishedCm, false) + extensionCm(finishedCm, true));
    }

    List<GarmentPiece> pieces() {
        List<Point> front = innerEdge(choice.gussetCm() > 0 ? 0 : extensionCm(finishedCm, false));
        List<Point> back = innerEdge(choice.gussetCm() > 0 ? 0 : extensionCm(finishedCm, true));
        List<GarmentPiece> pieces = new ArrayList<>();
        if (choice.sideSeams()) {
            pieces.add(half("leg front", front));
            pieces.add(half("leg back", back));
        } else {
            boolean alike = front.equals(back);
            pieces.add(new GarmentPiece("leg", joined(mirrored(front), back), 2, !alike, alike).matchedAtHem());
        }
        if (choice.gussetCm() > 0) {
            Outline gusset = Outline.rectangle(
                    cloth.acrossCm(choice.gussetCm()) + 2 * seamCm(), cloth.alongCm(choice.gussetCm()) + 2 * seamCm());
            pieces.add(new GarmentPiece("gusset", gusset, 1, false, true));
        }
        return pieces;
    }

    private GarmentPiece half(String name, List<Point> inner) {
        double seam = seamCm();
        double top = inner.get(inner.size() - 1).yCm();
        boolean straight = inner.stream().mapToDouble(Point::xCm).distinct().count() == 1;
        List<Point> side = List.of(new Point(-seam, top), new Point(-seam, 0));
        GarmentPiece leg = new GarmentPiece(name, joined(side, inner), 2, !straight, straight);
        return straight ? leg.matchedAtHem() : leg.matchedAtHem(seam);
    }

    /** From the hem up to the waist; x from the middle of the leg's outer side. */
    private List<Point> innerEdge(double extensionCm) {
        double seam = seamCm();
        double heightCm = legHem.allowanceCm() + sizes.outsideCm() + CASING_CM;
        double crotchY = heightCm - CASING_CM - cloth.alongCm(sizes.crotchDepthCm());
        double hemX = cloth.acrossCm(sizes.legEndCm() / 2) + seam;
        double crotchX = cloth.acrossCm(finishedCm / 4 + extensionCm) + seam;
        double topX = cloth.acrossCm(finishedCm / 4) + seam;
        List<Point> edge = new ArrayList<>();
        edge.add(new Point(hemX, 0));
        if (hemX != crotchX || crotchX != topX) {
            edge.add(new Point(hemX, legHem.washedAllowanceCm()));
            edge.add(new Point(crotchX, crotchY));
        }
        if (extensionCm > 0) {
            addCurve(edge, crotchX, topX, crotchY, cloth.alongCm(sizes.crotchDepthCm()) * CURVE_HEIGHT_SHARE);
        }
        edge.add(new Point(topX, heightCm));
        return edge;
    }

    /** A quarter of an ellipse, hollow towards the crotch. */
    private static void addCurve(List<Point> edge, double fromX, double toX, double y, double heightCm) {
        for (int i = 1; i <= CURVE_STEPS; i++) {
            double angle = Math.PI / 2 * i / CURVE_STEPS;
            edge.add(new Point(toX + (fromX - toX) * (1 - Math.sin(angle)), y + heightCm * (1 - Math.cos(angle))));
        }
    }

    /** The same edge on the other side, from the waist down to the hem. */
    private static List<Point> mirrored(List<Point> edge) {
        List<Point> mirrored = new ArrayList<>(
                edge.stream().map(p -> new Point(-p.xCm(), p.yCm())).toList());
        Collections.reverse(mirrored);
        return mirrored;
    }

    private static Outline joined(List<Point> left, List<Point> right) {
        List<Point> all = new ArrayList<>(right);
        all.addAll(left);
        return Outline.of(all).movedTo(0, 0);
    }
}
