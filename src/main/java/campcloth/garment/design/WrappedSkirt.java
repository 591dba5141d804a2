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
 * A skirt that is wrapped round the waist and overlaps: as many equal panels as the cloth's width makes necessary, straight or a
 * little flared, a waistband with ties or buttons. Sizes after {@link SkirtSizes}, pieces after {@link WrappedCut}, seams and
 * hems after {@link WrappedSewing}. Covered share of the body after {@link Cover}.
 */
public final class WrappedSkirt implements Design {

    static final Option OVERLAP = Option.cm("overlapCm", 30, 10, 100, "how far the ends lie over each other");
    static final Option FLARE = Option.cm("flareCm", 0, 0, 20, "how much wider each panel is at the hem on each side");
    static final Option TIES = Option.yesNo("ties", true, "ties at the waistband's ends instead of buttons");
    static final Option BAND = Option.cm("bandWidthCm", 4, 2, 10, "how wide the waistband is");
    static final Option SEAM = Option.cm(
            SEAM_ALLOWANCE,
            2,
            1.2,
            4,
            "cloth beyond each seam line and each open edge; 0.5 cm more is left on cloth that frays");
    static final Option HEM = Option.cm(HEM_ALLOWANCE, 5, 2, 10, "most cloth that is left for the hem");

    private static final List<Option> OPTIONS = List.of(OVERLAP, FLARE, TIES, BAND, SEAM, HEM);

    @Override
    public String key() {
        return "wrapped-skirt";
    }

    @Override
    public String name() {
        return "Wrapped skirt";
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
        double areaCm2 = (sizes.hipCm() + Options.USUAL.cm(OVERLAP)) * sizes.lengthCm();
        return new Wear(nextToSkin, Layer.OUTER, Fit.LOOSE, false, sizes.coveredPercent(), areaCm2 / 1e4);
    }

    @Override
    public List<String> assumptions(Measurements wearer) {
        return SkirtSizes.worn(wearer, SewnCloth.usual(), key()).notes();
    }

    @Override
    public Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        SkirtSizes sizes = SkirtSizes.worn(wearer, cloth, key());
        return Refused.within(
                "options", () -> WrappedSewing.garment(WrappedCut.of(sizes, new Chosen(OPTIONS, options), cloth)));
    }

    @Override
    public Optional<Narrower> narrower(Options options) {
        return Optional.empty();
    }
}
