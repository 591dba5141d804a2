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
 * A hood with a shoulder cape, in two mirrored halves or in one piece with the back on a fold, open at the face; the cape widened
 * by gores on the shoulders or by flaring its seams. Sizes after {@link HoodSizes}, pieces after {@link HoodCut}, seams and
 * hems after {@link HoodSewing}.
 *
 * <p>Covered share of the body: 15 % for a cape 20 cm long, as in the list of worn garments; a longer cape covers more, by its
 * share of the trunk's 65 cm (project choice).
 */
public final class Hood implements Design {

    static final Option BACK_ON_FOLD = Option.yesNo(
            "backOnFold", false, "one piece, its back on a fold, instead of two halves; the crown is then square");
    static final Option GORES = Option.yesNo("gores", true, "set a gore into the cape on each shoulder");
    static final Option FRONT_SLIT =
            Option.cm("frontSlitCm", 0, 0, 60, "how far the front stays open from the throat down, with buttons");
    static final Option SEAM = Option.cm(
            SEAM_ALLOWANCE,
            1.5,
            1.2,
            3,
            "cloth beyond each seam line and each open edge; 0.5 cm more is left on cloth that frays");
    static final Option HEM = Option.cm(HEM_ALLOWANCE, 3, 2, 6, "most cloth that is left for the cape's hem");

    private static final List<Option> OPTIONS = List.of(BACK_ON_FOLD, GORES, FRONT_SLIT, SEAM, HEM);

    private static final double COVERED_PERCENT = 15;
    private static final double LISTED_CAPE_CM = 20;
    private static final double TRUNK_CM = 65;

    @Override
    public String key() {
        return "hood";
    }

    @Override
    public String name() {
        return "Hood";
    }

    @Override
    public List<Measurement> measurements() {
        return HoodSizes.ALL;
    }

    @Override
    public List<Option> options() {
        return OPTIONS;
    }

    @Override
    public Wear wear(boolean nextToSkin, Measurements wearer) {
        HoodSizes sizes = usual(wearer);
        double covered = COVERED_PERCENT + Cover.TRUNK_PERCENT * (sizes.capeCm() - LISTED_CAPE_CM) / TRUNK_CM;
        double areaCm2 = 2 * sizes.depthCm() * sizes.heightCm()
                + (sizes.neckRoundCm(0) + sizes.capeRoundCm(0)) / 2 * sizes.capeCm();
        return new Wear(nextToSkin, Layer.OUTER, Fit.LOOSE, false, covered, areaCm2 / 1e4);
    }

    @Override
    public List<String> assumptions(Measurements wearer) {
        return usual(wearer).notes();
    }

    private static HoodSizes usual(Measurements wearer) {
        return Refused.within(
                "wearer", () -> HoodSizes.of(wearer, SewnCloth.usual().thicknessMm()));
    }

    @Override
    public Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        HoodSizes sizes = Refused.within("wearer", () -> HoodSizes.of(wearer, cloth.thicknessMm()));
        HoodChoice choice = Refused.within("options", () -> HoodChoice.of(new Chosen(OPTIONS, options), sizes));
        return HoodSewing.garment(sizes, choice, cloth);
    }

    @Override
    public Optional<Narrower> narrower(Options options) {
        if (!options.yes(BACK_ON_FOLD)) {
            return Optional.empty();
        }
        return Optional.of(new Narrower(
                options.with(BACK_ON_FOLD.key(), false),
                "cut it in two halves with a seam down the back (option " + BACK_ON_FOLD.key() + " false)"));
    }
}
