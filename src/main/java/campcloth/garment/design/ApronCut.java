package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
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
 * The pieces of an apron, all rectangles. The skirt is cut in as many equal panels as the cloth's width makes necessary. Seams
 * and side edges 2 cm where no other is chosen (common practice, no source), 5 mm more on cloth that frays; the bib's upper edge
 * is folded like its sides.
 *
 * @param widthCm of the skirt below the band, as worn
 * @param gatheredCm width gathered to the band on top of that
 * @param bibWidthCm width of the bib, 0 without
 */
record ApronCut(
        ApronSizes sizes,
        double widthCm,
        double gatheredCm,
        double bibWidthCm,
        double bandCm,
        double seamCm,
        double hemCm,
        SewnCloth cloth) {

    private static final int MOST_PANELS = 20;
    private static final double TOUCH_CM = 1e-9;
    /** Common practice, no source: what each end needs for a bow. */
    private static final double BOW_CM = 45;

    private static final double TIE_WIDTH_CM = 3;
    private static final double STRAP_WIDTH_CM = 4;

    static ApronCut of(ApronSizes sizes, Chosen chosen, SewnCloth cloth) {
        checkBib(chosen);
        return new ApronCut(
                sizes,
                chosen.cm(Apron.WIDTH.key()),
                chosen.cm(Apron.GATHERED.key()),
                chosen.yes(Apron.BIB.key()) ? chosen.cm(Apron.BIB_WIDTH.key()) : 0,
                chosen.cm(Apron.BAND.key()),
                chosen.cm(Design.SEAM_ALLOWANCE),
                chosen.cm(Design.HEM_ALLOWANCE),
                cloth);
    }

    private static void checkBib(Chosen chosen) {
        double widthCm = chosen.cm(Apron.WIDTH.key());
        if (chosen.yes(Apron.BIB.key()) && chosen.cm(Apron.BIB_WIDTH.key()) > widthCm) {
            throw Refused.of(
                    Apron.BIB_WIDTH.key(),
                    "is wider than the band of " + Words.number(widthCm) + " cm that it is sewn to",
                    "give at most " + Words.number(widthCm) + " cm, or a wider apron (option " + Apron.WIDTH.key()
                            + ")");
        }
    }

    double seamAllowanceCm() {
        return cloth.seamAllowanceCm(seamCm);
    }

    double skirtCm() {
        return widthCm + gatheredCm;
    }

    boolean hasBib() {
        return bibWidthCm > 0;
    }

    int panels() {
        int panels = 1;
        while (panels < MOST_PANELS && panelWidthCm(panels) > cloth.usableWidthCm() + TOUCH_CM) {
            panels++;
        }
        return panels;
    }

    private double panelWidthCm(int panels) {
        return cloth.acrossCm(skirtCm() / panels) + 2 * seamAllowanceCm();
    }

    /** Widest apron, gathers as they are, that is cut in so many panels, in whole cm. */
    double widestCm(int panels) {
        double each = (cloth.usableWidthCm() - 2 * seamAllowanceCm()) / cloth.acrossCm(1);
        return Math.floor(panels * each - gatheredCm + TOUCH_CM);
    }

    private double openEdgeCm() {
        return Math.min(seamCm, HemEdge.Kind.SIDE.usualAllowanceCm());
    }

    /** The hem first, then the open edges. */
    List<Hem> hems() {
        List<Hem> hems = new ArrayList<>();
        hems.add(HemRules.hem(
                new HemEdge(HemEdge.Kind.BODY, skirtCm(), sizes.lengthCm(), skirtCm() / panels(), 0, hemCm), cloth));
        double sidesCm = 2 * sizes.lengthCm() + (hasBib() ? 2 * sizes.bibHeightCm() : 0);
        hems.add(HemRules.hem(new HemEdge(HemEdge.Kind.SIDE, sidesCm, 0, skirtCm(), 0, openEdgeCm()), cloth));
        if (hasBib()) {
            hems.add(HemRules.hem(
                    new HemEdge(HemEdge.Kind.TOP, bibWidthCm, sizes.bibHeightCm(), bibWidthCm, 0, openEdgeCm()),
                    cloth));
        }
        return hems;
    }

    List<GarmentPiece> pieces() {
        double seam = seamAllowanceCm();
        List<GarmentPiece> pieces = new ArrayList<>();
        double heightCm = seam + sizes.lengthCm() + hems().get(0).allowanceCm();
        pieces.add(
                new GarmentPiece("apron", Outline.rectangle(panelWidthCm(panels()), heightCm), panels(), false, true));
        if (hasBib()) {
            double bibCm = seam + cloth.alongCm(sizes.bibHeightCm()) + seam;
            pieces.add(new GarmentPiece(
                    "bib", Outline.rectangle(cloth.acrossCm(bibWidthCm) + 2 * seam, bibCm), 1, false, true));
        }
        return pieces;
    }

    /** Each tie goes round the back and on to the middle of the front, where the bow is. */
    double tieCm() {
        return Math.max(0, sizes.waistCm() - widthCm) + widthCm / 2 + BOW_CM;
    }

    List<GarmentPiece> smallPieces() {
        List<GarmentPiece> small = new ArrayList<>();
        small.add(Band.of("band", 1, widthCm, bandCm, cloth));
        small.add(Band.of("tie", 2, tieCm(), TIE_WIDTH_CM, cloth));
        if (hasBib()) {
            small.add(Band.of("strap", 2, sizes.strapCm(), STRAP_WIDTH_CM, cloth));
        }
        return small;
    }
}
