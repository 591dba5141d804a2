package campcloth.garment.design;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Wear;
import campcloth.figure.Refused;
import campcloth.garment.Design;
import campcloth.garment.Garment;
import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import campcloth.garment.Option;
import campcloth.garment.Options;
import campcloth.garment.SewnCloth;
import java.util.List;
import java.util.Optional;

/**
 * A cloak from a quarter of a circle to a whole one, open in front, its neck a smaller circle: sizes after {@link CloakSizes},
 * pieces after {@link CloakCut}, seams and hems after {@link CloakSewing}. Where the cloth is narrow it is pieced by seams
 * along the grain. It has no hood and no armholes.
 *
 * <p>Covered share of the body after {@link Cover}, trunk and arms evenly over the first 65 cm; of that 65 parts in 75, since it
 * hangs between open and drawn together (project choice). Reckoned for a half circle.
 */
public final class Cloak implements Design {

    static final Option QUARTERS =
            Option.count("quarters", 2, 1, 4, "how many quarters of a full circle it is cut from");
    static final Option QUARTER_WEDGES =
            Option.yesNo("quarterWedges", false, "cut each quarter of the circle by itself, with seams between");
    static final Option MIDDLE_ON_GRAIN = Option.yesNo(
            "middleOnGrain",
            false,
            "lay each part with its middle along the grain instead of one straight edge, so that it hangs alike on both"
                    + " sides");
    static final Option FRONT_FACING =
            Option.yesNo("frontFacing", false, "face the front edges instead of hemming them");
    static final Option HEM_FACING = Option.yesNo("hemFacing", false, "face the hem instead of folding it");
    static final Option SEAM = Option.cm(
            SEAM_ALLOWANCE,
            2,
            1.2,
            3,
            "cloth beyond each seam line and each front edge; 0.5 cm more is left on cloth that frays");
    static final Option HEM = Option.cm(HEM_ALLOWANCE, 3, 2, 8, "most cloth that is left for the hem");

    private static final List<Option> OPTIONS =
            List.of(QUARTERS, QUARTER_WEDGES, MIDDLE_ON_GRAIN, FRONT_FACING, HEM_FACING, SEAM, HEM);

    private static final double UPPER_BODY_CM = 65;
    private static final double HALF_OPEN = 65.0 / 75;

    @Override
    public String key() {
        return "cloak";
    }

    @Override
    public String name() {
        return "Cloak";
    }

    @Override
    public List<Measurement> measurements() {
        return CloakSizes.ALL;
    }

    @Override
    public List<Option> options() {
        return OPTIONS;
    }

    @Override
    public Wear wear(boolean nextToSkin, Measurements wearer) {
        CloakSizes sizes = usual(wearer);
        double upper = Cover.TRUNK_PERCENT + Cover.armsPercent(UPPER_BODY_CM);
        double covered = upper * Math.min(1, sizes.lengthCm() / UPPER_BODY_CM) + Cover.legsPercent(sizes.lengthCm());
        double areaCm2 = CloakChoice.USUAL.sector(sizes).areaCm2() * CloakChoice.USUAL.wedges();
        return new Wear(nextToSkin, Layer.OUTER, Fit.LOOSE, false, HALF_OPEN * covered, areaCm2 / 1e4);
    }

    @Override
    public List<String> assumptions(Measurements wearer) {
        return usual(wearer).notes();
    }

    private static CloakSizes usual(Measurements wearer) {
        return Refused.within(
                "wearer", () -> CloakSizes.of(wearer, SewnCloth.usual().thicknessMm()));
    }

    @Override
    public Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        CloakSizes sizes = Refused.within("wearer", () -> CloakSizes.of(wearer, cloth.thicknessMm()));
        CloakChoice choice = Refused.within("options", () -> CloakChoice.of(options));
        return CloakSewing.garment(sizes, choice, cloth);
    }

    @Override
    public Optional<Narrower> narrower(Options options) {
        return Optional.empty();
    }
}
