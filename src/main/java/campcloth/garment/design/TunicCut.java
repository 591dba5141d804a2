package campcloth.garment.design;

import campcloth.garment.GarmentPiece;
import campcloth.garment.Hem;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;
import java.util.ArrayList;
import java.util.List;

/**
 * The pieces of a tunic with their allowances (common practice, no source): at the seams 2 cm where no other is chosen,
 * which leaves room to let out, 5 mm more on cloth that frays; at hem and cuff what the hem asks for. The neck circle, 1 cm
 * smaller in radius than the finished neck, and the front slit are cut after the shoulders are sewn; they save no cloth and
 * are no outlines. The facing comes from the scraps.
 *
 * <p>Cloth that was not washed before cutting: across, each finished width is cut wider by the weft's residual shrinkage;
 * along, the residual of the finished length is part of the hem's allowance.
 */
record TunicCut(TunicSizes sizes, TunicChoice choice, SewnCloth cloth, Hem bodyHem, Hem cuffHem) {

    private static final double FRAYING_CM = 0.5;
    private static final double FACING_WIDTH_CM = 30;
    private static final double FACING_HEIGHT_CM = 40;

    double seamAllowanceCm() {
        return cloth.frays() ? choice.seamCm() + FRAYING_CM : choice.seamCm();
    }

    /** Width of one body panel at the top, allowances included. */
    double panelWidthCm() {
        double finished = choice.centreSeams() ? sizes.chestCm() / 4 : sizes.chestCm() / 2;
        return cloth.acrossCm(finished) + 2 * seamAllowanceCm();
    }

    int panels() {
        return choice.centreSeams() ? 4 : 2;
    }

    /** The same where it is widest, flare included. */
    double widestPanelCm() {
        return body().widthCm();
    }

    List<GarmentPiece> pieces() {
        List<GarmentPiece> pieces = new ArrayList<>();
        boolean halves = choice.centreSeams();
        Outline body = body();
        boolean pair = halves && choice.flareCm() > 0;
        pieces.add(new GarmentPiece("front", body, halves ? 2 : 1, pair, !pair));
        pieces.add(new GarmentPiece("back", body, halves ? 2 : 1, pair, !pair));
        pieces.add(new GarmentPiece("sleeve", sleeve(), 2, false, true));
        return pieces;
    }

    /** The facing, 4 cm wide round neck and slit, cut from one scrap. */
    List<GarmentPiece> smallPieces() {
        return List.of(
                new GarmentPiece("facing", Outline.rectangle(FACING_WIDTH_CM, FACING_HEIGHT_CM), 1, false, true));
    }

    private Outline body() {
        double flare = cloth.acrossCm(choice.flareCm());
        double seam = seamAllowanceCm();
        double heightCm = seam + sizes.lengthCm() + bodyHem.allowanceCm();
        return Panels.flared(
                panelWidthCm(),
                choice.centreSeams() ? 0 : flare,
                flare,
                heightCm,
                heightCm - seam - cloth.alongCm(sizes.armholeCm()),
                bodyHem.washedAllowanceCm());
    }

    private Outline sleeve() {
        double seam = seamAllowanceCm();
        return Panels.sleeve(
                cloth.acrossCm(sizes.sleeveTopWidthCm()) + 2 * seam,
                cloth.acrossCm(sizes.cuffWidthCm()) + 2 * seam,
                seam + sizes.sleeveLengthCm() + cuffHem.allowanceCm(),
                seam,
                cuffHem.washedAllowanceCm());
    }
}
