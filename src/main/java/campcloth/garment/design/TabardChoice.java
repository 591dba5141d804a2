package campcloth.garment.design;

import campcloth.garment.Design;
import campcloth.garment.Options;

/**
 * The options of a tabard, read.
 *
 * @param ties two pairs at the waist
 * @param belt of the same cloth
 * @param flareCm how much wider each half is at the hem on each side
 * @param neck the neck
 * @param onePiece front and back in one, folded over the shoulder
 * @param riseCm from the shoulder up to that fold, 0 where there is a shoulder seam
 * @param seamCm cloth beyond each seam line
 * @param hemCm most cloth left for the hem
 */
record TabardChoice(
        boolean ties,
        boolean belt,
        double flareCm,
        Neck neck,
        boolean onePiece,
        double riseCm,
        double seamCm,
        double hemCm) {

    static TabardChoice of(Options options, TabardSizes sizes) {
        Chosen chosen = new Chosen(Tabard.OPTIONS, options);
        boolean onePiece = chosen.yes(BodyOptions.ONE_PIECE);
        Neck neck = new Neck(
                sizes.neckDiameterCm(),
                chosen.cm(BodyOptions.SLIT),
                chosen.yes(BodyOptions.SQUARE_NECK),
                sizes.headCm());
        neck.checkAbove(sizes.lengthCm());
        return new TabardChoice(
                chosen.yes(Tabard.TIES),
                chosen.yes(Tabard.BELT),
                chosen.cm(BodyOptions.FLARE),
                neck,
                onePiece,
                onePiece ? chosen.cm(BodyOptions.SHOULDER_RISE) : 0,
                chosen.cm(Design.SEAM_ALLOWANCE),
                chosen.cm(Design.HEM_ALLOWANCE));
    }
}
