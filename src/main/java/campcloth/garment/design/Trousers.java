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
 * Loose trousers drawn in at the waist by a cord: two legs, straight or narrowing to their ends, with a square gusset in the
 * crotch or a curve. Sizes after {@link TrouserSizes}, pieces after {@link TrouserCut}, seams and hems after
 * {@link TrouserSewing}. Not for riding or climbing, and no fitted cut.
 *
 * <p>Covered share of the body (project choice after the rule of nines, from memory): the legs' 36 % by the inseam over 76 cm, and
 * 12 % of the trunk.
 */
public final class Trousers implements Design {

    static final Option GUSSET =
            Option.yesNo("gusset", true, "a square set on its corner into the crotch, in place of a curve");
    static final Option GUSSET_SIDE = Option.cm("gussetCm", 14, 6, 24, "how long each side of the gusset is");
    static final Option EASE = Option.cm("easeCm", 20, 8, 80, "how much wider than hip and waist they are");
    static final Option SIDE_SEAMS = Option.yesNo(
            "sideSeams", false, "cut each leg in front and back with a seam at the side, for narrow cloth");
    static final Option SEAM = BodyOptions.seam(2);
    static final Option HEM = Option.cm(HEM_ALLOWANCE, 5, 2, 10, "most cloth that is left at the leg ends");

    static final List<Option> OPTIONS = List.of(GUSSET, GUSSET_SIDE, EASE, SIDE_SEAMS, SEAM, HEM);

    private static final double LEGS_PERCENT = 36;
    private static final double SEAT_PERCENT = 12;
    private static final double FULL_INSEAM_CM = 76;

    @Override
    public String key() {
        return "trousers";
    }

    @Override
    public String name() {
        return "Loose trousers";
    }

    @Override
    public List<Measurement> measurements() {
        return TrouserSizes.ALL;
    }

    @Override
    public List<Option> options() {
        return OPTIONS;
    }

    @Override
    public Wear wear(boolean nextToSkin, Measurements wearer) {
        TrouserSizes sizes = sizes(wearer);
        double roundCm = sizes.aroundCm() + EASE_TAKEN_CM;
        double legRoundCm = TrouserCut.legRoundCm(roundCm, GUSSET_TAKEN_CM);
        double areaCm2 = roundCm * sizes.crotchDepthCm() + (legRoundCm + sizes.legEndCm()) * sizes.inseamCm();
        double covered = SEAT_PERCENT + LEGS_PERCENT * Math.min(1, sizes.inseamCm() / FULL_INSEAM_CM);
        return new Wear(nextToSkin, Layer.OUTER, Fit.LOOSE, false, covered, areaCm2 / 1e4);
    }

    private static final double EASE_TAKEN_CM = 20;
    private static final double GUSSET_TAKEN_CM = 14;

    @Override
    public List<String> assumptions(Measurements wearer) {
        return sizes(wearer).notes();
    }

    private static TrouserSizes sizes(Measurements wearer) {
        return Refused.within("wearer", () -> TrouserSizes.of(wearer));
    }

    @Override
    public Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        TrouserSizes sizes = sizes(wearer);
        TrouserChoice choice = Refused.within("options", () -> TrouserChoice.of(options));
        return Refused.within("wearer", () -> TrouserSewing.garment(sizes, choice, cloth));
    }

    @Override
    public Optional<Narrower> narrower(Options options) {
        if (options.yes(SIDE_SEAMS)) {
            return Optional.empty();
        }
        return Optional.of(new Narrower(
                options.with(SIDE_SEAMS.key(), true),
                "cut each leg in front and back with a seam at the side (option " + SIDE_SEAMS.key() + ")"));
    }
}
