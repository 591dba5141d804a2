package campcloth.garment.design;

import campcloth.garment.GarmentPiece;
import campcloth.garment.Hem;
import campcloth.garment.SewnCloth;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The gores of a skirt, all alike: each a share of waist, hip and hem, straight from waist to hem where that is wide enough for
 * the hip, else with a bend at the hip. Seams 2 cm where no other is chosen (common practice, no source), 5 mm more on cloth
 * that frays; above the waist the seam's allowance, or with a cord the casing, twice {@value #CASING_CM} cm.
 */
record GoredCut(SkirtSizes sizes, GoredChoice choice, SewnCloth cloth, Hem hem) {

    static final double CASING_CM = 2.5;
    private static final double BAND_OVERLAP_CM = 3;

    double seamAllowanceCm() {
        return cloth.seamAllowanceCm(choice.seamCm());
    }

    /** One gore as sewn. */
    static FlaredStrip gore(SkirtSizes sizes, GoredChoice choice) {
        return gore(sizes, choice, 1, 1);
    }

    private static FlaredStrip gore(SkirtSizes sizes, GoredChoice choice, double across, double along) {
        double share = across / (2 * choice.gores());
        double topCm = choice.topCm(sizes);
        double below = (sizes.lengthCm() - sizes.hipDepthCm()) * along;
        Point hem = new Point(choice.sweepCm() * share, 0);
        Point waist = new Point(topCm * share, sizes.lengthCm() * along);
        double straightCm = topCm + (choice.sweepCm() - topCm) * sizes.hipDepthCm() / sizes.lengthCm();
        return straightCm >= sizes.hipCm()
                ? new FlaredStrip(List.of(hem, waist))
                : new FlaredStrip(List.of(hem, new Point(sizes.hipCm() * share, below), waist));
    }

    List<GarmentPiece> pieces() {
        FlaredStrip cut = gore(sizes, choice, cloth.acrossCm(1), cloth.alongCm(1));
        double topCm = choice.drawstring() ? 2 * CASING_CM : seamAllowanceCm();
        return List.of(new GarmentPiece(
                "gore", cut.outline(seamAllowanceCm(), topCm, hem.washedAllowanceCm()), choice.gores(), false, true));
    }

    double bandLengthCm() {
        return sizes.waistCm() + BAND_OVERLAP_CM;
    }

    List<GarmentPiece> smallPieces() {
        if (choice.drawstring()) {
            return List.of();
        }
        List<GarmentPiece> small = new ArrayList<>();
        small.add(Band.of("waistband", 1, bandLengthCm(), choice.bandCm(), cloth));
        if (choice.placketCm() > 0) {
            small.add(Band.of("placket facing", 1, 2 * choice.placketCm(), 2, cloth));
        }
        return small;
    }
}
