package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Design;
import campcloth.garment.Options;

/**
 * The options of a garment of the upper body, read.
 *
 * @param splitCm length of each side split, 0 without splits
 * @param flareCm how much wider each half is at the hem on each side
 * @param neck the neck
 * @param centreSeams front and back in two halves each
 * @param onePiece front and back in one, folded over the shoulder
 * @param riseCm from the shoulder up to that fold, 0 where there is a shoulder seam
 * @param gores triangles set in
 * @param gussetCm side of the square under each arm, 0 without
 * @param bandCm height of the band at each sleeve's end, 0 without
 * @param seamCm cloth beyond each seam line
 * @param hemCm most cloth left for the hem
 * @param cuffCm most cloth left at the sleeves' ends
 */
record BodyChoice(
        double splitCm,
        double flareCm,
        Neck neck,
        boolean centreSeams,
        boolean onePiece,
        double riseCm,
        Gores gores,
        double gussetCm,
        double bandCm,
        double seamCm,
        double hemCm,
        double cuffCm) {

    /** Left open above a band, so that the hand passes. */
    static final double WRIST_SLIT_CM = 8;

    private static final double LEAST_SEAM_CM = 1;

    static BodyChoice of(Options options, BodySizes sizes) {
        Chosen chosen = new Chosen(sizes.profile().options(), options);
        boolean onePiece = chosen.yes(BodyOptions.ONE_PIECE);
        double splitCm = chosen.cm(BodyOptions.SPLIT_LENGTH);
        BodyChoice choice = new BodyChoice(
                chosen.yes(BodyOptions.SIDE_SPLITS) ? splitCm : 0,
                chosen.cm(BodyOptions.FLARE),
                new Neck(
                        sizes.neckDiameterCm(),
                        chosen.cm(BodyOptions.SLIT),
                        chosen.yes(BodyOptions.SQUARE_NECK),
                        sizes.headCm()),
                chosen.yes(BodyOptions.CENTRE_SEAMS),
                onePiece,
                onePiece ? chosen.cm(BodyOptions.SHOULDER_RISE) : 0,
                Gores.of(chosen),
                chosen.cm(BodyOptions.GUSSET),
                chosen.cm(BodyOptions.CUFF_BAND),
                chosen.cm(Design.SEAM_ALLOWANCE),
                chosen.cm(Design.HEM_ALLOWANCE),
                chosen.cm(Design.CUFF_ALLOWANCE));
        choice.check(sizes);
        return choice;
    }

    private void check(BodySizes sizes) {
        double seamCm = sizes.lengthCm() - sizes.armholeCm();
        if (splitCm >= seamCm) {
            throw Refused.of(
                    BodyOptions.SPLIT_LENGTH,
                    "is no shorter than the side seam of " + Words.number(seamCm) + " cm",
                    "give a shorter split");
        }
        neck.checkAbove(sizes.lengthCm());
        if (gores.sides() && splitCm > 0) {
            throw Refused.of(
                    BodyOptions.SIDE_SPLITS, "would open the seams that the gores stand in", "choose one of the two");
        }
        if (gores.sides() && flareCm > 0) {
            throw Refused.of(
                    BodyOptions.FLARE, "widens the sides that the gores widen", "choose a flare or side gores");
        }
        gores.check(seamCm, sizes.lengthCm() - sizes.neckDiameterCm() - neck.slitCm());
        checkGusset(sideSeamCm(sizes) + gussetCm);
        checkBand(sizes);
    }

    private void checkGusset(double sideSeamCm) {
        if (gussetCm > 0 && gussetCm + LEAST_SEAM_CM > sideSeamCm) {
            throw Refused.of(
                    BodyOptions.GUSSET,
                    "is longer than what is left of the side seam, " + Words.number(sideSeamCm) + " cm",
                    "give a smaller gusset");
        }
    }

    private void checkBand(BodySizes sizes) {
        double leastCm = bandCm + wristSlitCm() + gussetCm + LEAST_SEAM_CM;
        if ((bandCm > 0 || gussetCm > 0) && sizes.sleeveLengthCm() < leastCm) {
            throw Refused.of(
                    bandCm > 0 ? BodyOptions.CUFF_BAND : BodyOptions.GUSSET,
                    "needs a sleeve of at least " + Words.number(leastCm)
                            + " cm with what else is chosen, and this has " + Words.number(sizes.sleeveLengthCm()),
                    "give 0, or a longer sleeve");
        }
        if (bandCm > 0 && sizes.cuffWidthCm() > sizes.sleeveTopWidthCm()) {
            throw Refused.of(
                    BodyOptions.CUFF_BAND,
                    "gathers a sleeve " + Words.number(sizes.sleeveTopWidthCm()) + " cm wide into a band of "
                            + Words.number(sizes.cuffWidthCm()) + " cm",
                    "give a narrower cuff, or 0 for a hem");
        }
    }

    double wristSlitCm() {
        return bandCm > 0 ? WRIST_SLIT_CM : 0;
    }

    /** What is sewn of one side seam, body to body. */
    double sideSeamCm(BodySizes sizes) {
        return hangsCm(sizes) - sizes.armholeCm() - splitCm - gores.ofSideSeamCm() - gussetCm;
    }

    /** What is sewn of one sleeve's own seam. */
    double sleeveSeamCm(BodySizes sizes) {
        return sleevePanelCm(sizes) - gussetCm - wristSlitCm();
    }

    /** Finished length of the sleeve's main piece. */
    double sleevePanelCm(BodySizes sizes) {
        return sizes.sleeveLengthCm() - bandCm;
    }

    /** Width of the sleeve's main piece at its end. */
    double sleeveEndCm(BodySizes sizes) {
        return bandCm > 0 ? sizes.sleeveTopWidthCm() : sizes.cuffWidthCm();
    }

    /** Finished length from the upper end of the body's cloth to the hem. */
    double hangsCm(BodySizes sizes) {
        return sizes.lengthCm() + riseCm;
    }

    /** Finished width round the hem. */
    double sweepCm(BodySizes sizes) {
        return sizes.chestCm() + 4 * flareCm + gores.sweepCm();
    }
}
