package campcloth.garment.design;

import campcloth.garment.Options;

/**
 * The options of trousers, read.
 *
 * @param gussetCm side of the square in the crotch, 0 for a crotch with a curve
 * @param easeCm finished width less the wider of waist and hip
 * @param sideSeams each leg in front and back
 * @param seamCm cloth beyond each seam line
 * @param hemCm most cloth left for the leg ends' hem
 */
record TrouserChoice(double gussetCm, double easeCm, boolean sideSeams, double seamCm, double hemCm) {

    static TrouserChoice of(Options options) {
        options.checkKnown(Trousers.OPTIONS);
        return new TrouserChoice(
                options.yes(Trousers.GUSSET) ? options.cm(Trousers.GUSSET_SIDE) : 0,
                options.cm(Trousers.EASE),
                options.yes(Trousers.SIDE_SEAMS),
                options.cm(Trousers.SEAM),
                options.cm(Trousers.HEM));
    }

    String howWider() {
        return gussetCm > 0
                ? "a larger gusset (option gussetCm) or more ease (option easeCm)"
                : "more ease (option easeCm)";
    }
}
