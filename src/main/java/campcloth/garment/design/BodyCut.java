package campcloth.garment.design;

import campcloth.garment.GarmentPiece;
import campcloth.garment.Hem;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;
import java.util.ArrayList;
import java.util.List;

/**
 * The pieces of a garment of the upper body with their allowances (common practice, no source): at the seams 2 cm where no other
 * is chosen, which leaves room to let out, 5 mm more on cloth that frays; at hem and cuff what the hem asks for. The neck is cut
 * after the shoulders are sewn; it saves no cloth and is no outline.
 *
 * <p>In one piece over the shoulder, the fold lies 7 cm above the shoulder where no other is chosen (common practice, no source),
 * so that the cloth is twice the length, that rise and the hem's allowance long.
 *
 * <p>Cloth that was not washed before cutting: across, each finished width is cut wider by the weft's residual shrinkage;
 * along, the residual of the finished length is part of the hem's allowance.
 */
record BodyCut(BodySizes sizes, BodyChoice choice, SewnCloth cloth, Hem bodyHem, Hem cuffHem) {

    private static final double BAND_OVERLAP_CM = 2;

    double seamAllowanceCm() {
        return cloth.seamAllowanceCm(choice.seamCm());
    }

    /** Width of one body panel at the top, allowances included. */
    double panelWidthCm() {
        double finished = choice.centreSeams() ? sizes.chestCm() / 4 : sizes.chestCm() / 2;
        return cloth.acrossCm(finished) + 2 * seamAllowanceCm();
    }

    int panels() {
        return (choice.onePiece() ? 1 : 2) * (choice.centreSeams() ? 2 : 1);
    }

    /** Finished length of one panel. */
    double panelLengthCm() {
        return choice.onePiece() ? 2 * choice.hangsCm(sizes) : sizes.lengthCm();
    }

    /** The same where it is widest, flare included. */
    double widestPanelCm() {
        return body().widthCm();
    }

    List<GarmentPiece> pieces() {
        List<GarmentPiece> pieces = new ArrayList<>();
        Outline body = body();
        boolean pair = choice.centreSeams() && choice.flareCm() > 0;
        int halves = choice.centreSeams() ? 2 : 1;
        for (String name : choice.onePiece() ? List.of("body") : List.of("front", "back")) {
            GarmentPiece panel = new GarmentPiece(name, body, halves, pair, !pair);
            pieces.add(pair ? panel.matchedAtHem(body.leftCm() + seamAllowanceCm()) : panel.matchedAtHem());
        }
        pieces.add(new GarmentPiece("sleeve", sleeve(), 2, false, true).matchedAtTop(seamAllowanceCm()));
        pieces.addAll(
                choice.gores().pieces(cloth, choice.centreSeams(), seamAllowanceCm(), bodyHem.washedAllowanceCm()));
        if (choice.gussetCm() > 0) {
            pieces.add(new GarmentPiece("gusset", sewnAllRound(choice.gussetCm(), choice.gussetCm()), 2, false, true));
        }
        if (choice.bandCm() > 0) {
            double aroundCm = sizes.cuffWidthCm() + BAND_OVERLAP_CM;
            pieces.add(new GarmentPiece("cuff band", sewnAllRound(aroundCm, 2 * choice.bandCm()), 2, false, true));
        }
        return pieces;
    }

    /** The facing, 4 cm wide round neck and slit. */
    List<GarmentPiece> smallPieces() {
        return List.of(choice.neck().facing(cloth));
    }

    private Outline sewnAllRound(double acrossCm, double alongCm) {
        double seams = 2 * seamAllowanceCm();
        return Outline.rectangle(cloth.acrossCm(acrossCm) + seams, cloth.alongCm(alongCm) + seams);
    }

    private Outline body() {
        double flare = cloth.acrossCm(choice.flareCm());
        double left = choice.centreSeams() ? 0 : flare;
        double armhole = cloth.alongCm(sizes.armholeCm());
        double hem = bodyHem.washedAllowanceCm();
        double belowCm = choice.hangsCm(sizes) + bodyHem.allowanceCm();
        if (choice.onePiece()) {
            return Panels.overShoulder(panelWidthCm(), left, flare, belowCm, belowCm - armhole, hem);
        }
        double seam = seamAllowanceCm();
        return Panels.flared(panelWidthCm(), left, flare, seam + belowCm, belowCm - armhole, hem);
    }

    private Outline sleeve() {
        double seam = seamAllowanceCm();
        double panel = choice.sleevePanelCm(sizes);
        boolean band = choice.bandCm() > 0;
        return Panels.sleeve(
                cloth.acrossCm(sizes.sleeveTopWidthCm()) + 2 * seam,
                cloth.acrossCm(choice.sleeveEndCm(sizes)) + 2 * seam,
                seam + (band ? cloth.alongCm(panel) + seam : panel + cuffHem.allowanceCm()),
                seam,
                band ? seam : cuffHem.washedAllowanceCm());
    }
}
