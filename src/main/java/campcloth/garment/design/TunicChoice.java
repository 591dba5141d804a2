package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Options;

/**
 * The options of a tunic, read.
 *
 * @param splitCm length of each side split, 0 without splits
 * @param flareCm how much wider each half is at the hem on each side
 * @param slitCm front slit
 * @param centreSeams front and back in two halves each
 * @param seamCm cloth beyond each seam line
 * @param hemCm most cloth left for the hem
 * @param cuffCm most cloth left at the sleeves' ends
 */
record TunicChoice(
        double splitCm,
        double flareCm,
        double slitCm,
        boolean centreSeams,
        double seamCm,
        double hemCm,
        double cuffCm) {

    static TunicChoice of(Options options, TunicSizes sizes) {
        options.checkKnown(new Tunic().options());
        double splitCm = options.cm(Tunic.SPLIT_LENGTH);
        boolean splits = options.yes(Tunic.SIDE_SPLITS);
        double seamCm = sizes.lengthCm() - sizes.armholeCm();
        if (splits && splitCm >= seamCm) {
            throw Refused.of(
                    Tunic.SPLIT_LENGTH.key(),
                    "is no shorter than the side seam of " + Words.number(seamCm) + " cm",
                    "give a shorter split");
        }
        double slitCm = options.cm(Tunic.SLIT);
        if (slitCm >= sizes.lengthCm() - sizes.neckDiameterCm()) {
            throw Refused.of(Tunic.SLIT.key(), "reaches the hem", "give a shorter slit");
        }
        return new TunicChoice(
                splits ? splitCm : 0,
                options.cm(Tunic.FLARE),
                slitCm,
                options.yes(Tunic.CENTRE_SEAMS),
                options.cm(Tunic.SEAM),
                options.cm(Tunic.HEM),
                options.cm(Tunic.CUFF));
    }
}
