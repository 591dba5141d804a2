package campcloth.garment.design;

import campcloth.garment.Options;

/**
 * The options of a cloak, read.
 *
 * @param quarters how many quarters of a full circle
 * @param quarterWedges each quarter cut by itself
 * @param middleOnGrain each wedge laid with its middle along the grain
 * @param seamCm cloth beyond each seam line and front edge
 * @param hemCm most cloth left for the hem
 */
record CloakChoice(
        int quarters,
        boolean quarterWedges,
        boolean middleOnGrain,
        boolean frontFacing,
        boolean hemFacing,
        double seamCm,
        double hemCm) {

    static final CloakChoice USUAL = of(Options.USUAL);

    static CloakChoice of(Options options) {
        options.checkKnown(new Cloak().options());
        return new CloakChoice(
                options.count(Cloak.QUARTERS),
                options.yes(Cloak.QUARTER_WEDGES),
                options.yes(Cloak.MIDDLE_ON_GRAIN),
                options.yes(Cloak.FRONT_FACING),
                options.yes(Cloak.HEM_FACING),
                options.cm(Cloak.SEAM),
                options.cm(Cloak.HEM));
    }

    /** Angle of the whole cloak, radians. */
    double angle() {
        return quarters * Math.PI / 2;
    }

    /** Parts with seams between that run from neck to hem: up to a half circle one, above it two halves. */
    int wedges() {
        if (quarterWedges) {
            return quarters;
        }
        return quarters <= 2 ? 1 : 2;
    }

    /** One wedge; the neck's radius from its edge: r = edge / angle. */
    CircleSector sector(CloakSizes sizes) {
        double neckRadiusCm = sizes.necklineCm() / angle();
        double outerCm = neckRadiusCm + sizes.lengthCm();
        double wedge = angle() / wedges();
        return middleOnGrain
                ? CircleSector.middleOnGrain(neckRadiusCm, outerCm, wedge)
                : CircleSector.edgeOnGrain(neckRadiusCm, outerCm, wedge);
    }

    /** The circle in words. */
    String words() {
        return switch (quarters) {
            case 1 -> "quarter circle";
            case 2 -> "half circle";
            case 3 -> "three-quarter circle";
            default -> "full circle";
        };
    }
}
