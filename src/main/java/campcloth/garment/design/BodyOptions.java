package campcloth.garment.design;

import campcloth.garment.Design;
import campcloth.garment.HemEdge;
import campcloth.garment.Option;

/** Options that the designs of the upper body share; the usual values are common practice, no source. */
final class BodyOptions {

    static final String SIDE_SPLITS = "sideSplits";
    static final String SPLIT_LENGTH = "splitLengthCm";
    static final String FLARE = "flareCm";
    static final String SLIT = "neckSlitCm";
    static final String SQUARE_NECK = "squareNeck";
    static final String CENTRE_SEAMS = "centreSeams";
    static final String ONE_PIECE = "onePiece";
    static final String SHOULDER_RISE = "shoulderRiseCm";
    static final String SIDE_GORES = Design.SIDE_GORES;
    static final String FRONT_BACK_GORES = "frontBackGores";
    static final String HALVED_GORES = "halvedGores";
    static final String GORE_WIDTH = "goreWidthCm";
    static final String GORE_HEIGHT = "goreHeightCm";
    static final String GUSSET = "gussetCm";
    static final String CUFF_BAND = "cuffBandCm";

    private BodyOptions() {}

    static Option sideSplits(boolean usual) {
        return Option.yesNo(SIDE_SPLITS, usual, "leave the side seams open below, for stride");
    }

    static Option splitLength() {
        return Option.cm(SPLIT_LENGTH, 20, 5, 100, "how long each side split is");
    }

    static Option flare() {
        return Option.cm(FLARE, 0, 0, 40, "how much wider each half is at the hem on each side");
    }

    static Option slit(double usualCm) {
        return Option.cm(SLIT, usualCm, 0, 40, "front slit below the neck circle");
    }

    static Option squareNeck() {
        return Option.yesNo(SQUARE_NECK, false, "cut the neck square in place of round, as wide as it would be across");
    }

    static Option centreSeams() {
        return Option.yesNo(
                CENTRE_SEAMS, false, "cut front and back in two halves each with a seam between, for narrow cloth");
    }

    static Option onePiece(boolean usual) {
        return Option.yesNo(
                ONE_PIECE, usual, "cut front and back in one, folded over the shoulder, without a shoulder seam");
    }

    static Option shoulderRise() {
        return Option.cm(
                SHOULDER_RISE,
                7,
                0,
                12,
                "in the one-piece cut, from the shoulder up to the fold; the slope of the shoulder takes it up");
    }

    static Option sideGores(boolean usual) {
        return Option.yesNo(SIDE_GORES, usual, "set a triangle into each side seam, in place of a flare");
    }

    static Option frontBackGores() {
        return Option.yesNo(FRONT_BACK_GORES, false, "set a triangle into the middle of front and back");
    }

    static Option halvedGores() {
        return Option.yesNo(HALVED_GORES, false, "cut each gore in two half triangles with a seam between");
    }

    static Option goreWidth(double usualCm) {
        return Option.cm(GORE_WIDTH, usualCm, 4, 120, "how wide each gore is at the hem");
    }

    static Option goreHeight(double usualCm) {
        return Option.cm(GORE_HEIGHT, usualCm, 10, 150, "how high each gore reaches above the hem");
    }

    static Option gusset(double usualCm) {
        return Option.cm(GUSSET, usualCm, 0, 25, "side of the square set under each arm; 0 without");
    }

    static Option cuffBand() {
        return Option.cm(CUFF_BAND, 5, 0, 12, "height of the band that the sleeve is gathered into; 0 for a hem");
    }

    static Option seam(double usualCm) {
        return Option.cm(
                Design.SEAM_ALLOWANCE,
                usualCm,
                1.2,
                4,
                "cloth beyond each seam line; 0.5 cm more is left on cloth that frays");
    }

    static Option hem(double usualCm) {
        return Option.cm(Design.HEM_ALLOWANCE, usualCm, 2, 10, "most cloth that is left for the hem");
    }

    static Option cuff() {
        return Option.cm(
                Design.CUFF_ALLOWANCE,
                HemEdge.Kind.CUFF.usualAllowanceCm(),
                2,
                10,
                "most cloth that is left at the sleeves' ends");
    }
}
