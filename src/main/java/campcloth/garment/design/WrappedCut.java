package campcloth.garment.design;

import campcloth.garment.Design;
import campcloth.garment.GarmentPiece;
import campcloth.garment.Hem;
import campcloth.garment.HemEdge;
import campcloth.garment.HemRules;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;
import java.util.ArrayList;
import java.util.List;

/**
 * The panels of a wrapped skirt, all alike and as few as the cloth's width allows: together as wide above as round the hip with
 * the overlap; what that is more than round the waist is laid in pleats under the band. Seams and open edges 2 cm where no
 * other is chosen (common practice, no source), 5 mm more on cloth that frays.
 *
 * @param overlapCm how far the ends lie over each other
 * @param flareCm how much wider each panel is at the hem on each side
 */
record WrappedCut(
        SkirtSizes sizes,
        double overlapCm,
        double flareCm,
        boolean ties,
        double bandCm,
        double seamCm,
        double hemCm,
        SewnCloth cloth) {

    private static final int MOST_PANELS = 20;
    private static final double TOUCH_CM = 1e-9;
    /** Common practice, no source: what one end needs to be knotted. */
    private static final double KNOT_CM = 40;

    private static final double TIE_WIDTH_CM = 3;

    static WrappedCut of(SkirtSizes sizes, Chosen chosen, SewnCloth cloth) {
        return new WrappedCut(
                sizes,
                chosen.cm(WrappedSkirt.OVERLAP.key()),
                chosen.cm(WrappedSkirt.FLARE.key()),
                chosen.yes(WrappedSkirt.TIES.key()),
                chosen.cm(WrappedSkirt.BAND.key()),
                chosen.cm(Design.SEAM_ALLOWANCE),
                chosen.cm(Design.HEM_ALLOWANCE),
                cloth);
    }

    double seamAllowanceCm() {
        return cloth.seamAllowanceCm(seamCm);
    }

    double topCm() {
        return sizes.hipCm() + overlapCm;
    }

    double bandLengthCm() {
        return sizes.waistCm() + overlapCm;
    }

    /** Width along the hem, end to end. */
    double hemWidthCm() {
        return topCm() + 2 * panels() * flareCm;
    }

    int panels() {
        int panels = 1;
        while (panels < MOST_PANELS && cutPanel(panels, 0, 0).widthCm() > cloth.usableWidthCm() + TOUCH_CM) {
            panels++;
        }
        return panels;
    }

    /** One panel as sewn. */
    FlaredStrip panel() {
        double top = topCm() / panels();
        return FlaredStrip.between(top + 2 * flareCm, top, sizes.lengthCm());
    }

    private Outline cutPanel(int panels, double topAllowanceCm, double hemAllowanceCm) {
        double top = cloth.acrossCm(topCm() / panels);
        return FlaredStrip.between(top + cloth.acrossCm(2 * flareCm), top, cloth.alongCm(sizes.lengthCm()))
                .outline(seamAllowanceCm(), topAllowanceCm, hemAllowanceCm);
    }

    Hem hem() {
        return HemRules.hem(
                new HemEdge(
                        HemEdge.Kind.BODY,
                        hemWidthCm(),
                        sizes.lengthCm(),
                        hemWidthCm() / panels(),
                        flareCm / sizes.lengthCm(),
                        hemCm),
                cloth);
    }

    Hem fronts() {
        double leftCm = Math.min(seamCm, HemEdge.Kind.FRONT.usualAllowanceCm());
        return HemRules.hem(
                new HemEdge(HemEdge.Kind.FRONT, 2 * panel().sideCm(), 0, hemWidthCm() / panels(), 0, leftCm), cloth);
    }

    List<GarmentPiece> pieces() {
        return List.of(new GarmentPiece(
                "panel", cutPanel(panels(), seamAllowanceCm(), hem().washedAllowanceCm()), panels(), false, true));
    }

    List<GarmentPiece> smallPieces() {
        List<GarmentPiece> small = new ArrayList<>();
        small.add(Band.of("waistband", 1, bandLengthCm(), bandCm, cloth));
        if (ties) {
            small.add(Band.of("short tie", 1, KNOT_CM, TIE_WIDTH_CM, cloth));
            small.add(Band.of("long tie", 1, sizes.waistCm() + KNOT_CM, TIE_WIDTH_CM, cloth));
        }
        return small;
    }
}
