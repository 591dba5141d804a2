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
 * A skirt of equal gores with a waistband and a placket, or with a casing and a cord. Sizes after {@link SkirtSizes}, pieces
 * after {@link GoredCut}, seams and hems after {@link GoredSewing}. Covered share of the body after {@link Cover}.
 */
public final class GoredSkirt implements Design {

    private static final int FEWEST = 4;
    private static final int MOST = 12;

    static final Option GORES = Option.count("gores", 6, FEWEST, MOST, "how many panels, all alike");
    static final Option SWEEP = Option.cm("sweepCm", 260, 80, 900, "how wide it is round the hem");
    static final Option DRAWSTRING = Option.yesNo(
            "drawstring",
            false,
            "a casing with a cord at the waist, wide enough for the hip, instead of band and placket");
    static final Option PLACKET = Option.cm("placketCm", 20, 0, 40, "how far one seam stays open below the waist");
    static final Option BAND = Option.cm("bandWidthCm", 4, 2, 10, "how wide the waistband is");
    static final Option SEAM = Option.cm(
            SEAM_ALLOWANCE, 2, 1.2, 4, "cloth beyond each seam line; 0.5 cm more is left on cloth that frays");
    static final Option HEM = Option.cm(HEM_ALLOWANCE, 5, 2, 10, "most cloth that is left for the hem");

    private static final List<Option> OPTIONS = List.of(GORES, SWEEP, DRAWSTRING, PLACKET, BAND, SEAM, HEM);

    @Override
    public String key() {
        return "gored-skirt";
    }

    @Override
    public String name() {
        return "Gored skirt";
    }

    @Override
    public List<Measurement> measurements() {
        return SkirtSizes.ALL;
    }

    @Override
    public List<Option> options() {
        return OPTIONS;
    }

    @Override
    public Wear wear(boolean nextToSkin, Measurements wearer) {
        SkirtSizes sizes = SkirtSizes.worn(wearer, SewnCloth.usual(), key());
        double sweepCm = Math.max(sizes.hipCm(), Options.USUAL.cm(SWEEP));
        double areaCm2 = (sizes.hipCm() + sweepCm) / 2 * sizes.lengthCm();
        return new Wear(nextToSkin, Layer.OUTER, Fit.LOOSE, false, sizes.coveredPercent(), areaCm2 / 1e4);
    }

    @Override
    public List<String> assumptions(Measurements wearer) {
        return SkirtSizes.worn(wearer, SewnCloth.usual(), key()).notes();
    }

    @Override
    public Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        SkirtSizes sizes = SkirtSizes.worn(wearer, cloth, key());
        GoredChoice choice = Refused.within("options", () -> GoredChoice.of(new Chosen(OPTIONS, options), sizes));
        return GoredSewing.garment(sizes, choice, cloth);
    }

    @Override
    public Optional<Narrower> narrower(Options options) {
        int gores = options.count(GORES);
        if (gores == MOST) {
            return Optional.empty();
        }
        int more = Math.min(MOST, 2 * gores);
        return Optional.of(new Narrower(
                options.with(GORES.key(), more), "cut it in " + more + " gores (option " + GORES.key() + ")"));
    }
}
