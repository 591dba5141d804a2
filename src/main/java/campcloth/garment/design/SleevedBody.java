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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A garment of the upper body with sleeves set on flat and a faced neck. Sizes after {@link BodySizes}, pieces after
 * {@link BodyCut}, seams and hems after {@link BodySewing}; covered share of the body after {@link Cover}.
 */
abstract class SleevedBody implements Design {

    private final BodyProfile profile;
    private final String name;

    SleevedBody(String name, BodyProfile profile) {
        this.name = name;
        this.profile = profile;
    }

    @Override
    public final String key() {
        return profile.design();
    }

    @Override
    public final String name() {
        return name;
    }

    @Override
    public final List<Measurement> measurements() {
        return profile.measurements();
    }

    @Override
    public final List<Option> options() {
        return profile.options();
    }

    /** Where it lies: on the skin's side a garment may be a middle layer. */
    abstract Layer layer(boolean nextToSkin);

    @Override
    public final Wear wear(boolean nextToSkin, Measurements wearer) {
        BodySizes sizes = worn(wearer);
        double covered =
                Cover.TRUNK_PERCENT + Cover.armsPercent(sizes.sleeveLengthCm()) + Cover.legsPercent(sizes.lengthCm());
        double areaCm2 = sizes.chestCm() * sizes.lengthCm()
                + (sizes.sleeveTopWidthCm() + sizes.cuffWidthCm()) * sizes.sleeveLengthCm();
        return new Wear(nextToSkin, layer(nextToSkin), Fit.LOOSE, false, covered, areaCm2 / 1e4);
    }

    @Override
    public final List<String> assumptions(Measurements wearer) {
        return worn(wearer).notes();
    }

    private BodySizes worn(Measurements wearer) {
        return Refused.within(
                "wearer",
                () -> BodySizes.usualFor(profile, wearer, SewnCloth.usual().thicknessMm()));
    }

    @Override
    public final Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        BodySizes sizes = Refused.within("wearer", () -> BodySizes.of(profile, wearer, cloth.thicknessMm()));
        BodyChoice choice = Refused.within("options", () -> BodyChoice.of(options, sizes));
        return BodySewing.garment(sizes, choice, cloth);
    }

    @Override
    public final Optional<Narrower> narrower(Options options) {
        Chosen chosen = new Chosen(profile.options(), options);
        Options narrower = options;
        List<String> ways = new ArrayList<>();
        if (!chosen.yes(BodyOptions.CENTRE_SEAMS)) {
            narrower = narrower.with(BodyOptions.CENTRE_SEAMS, true);
            ways.add("cut front and back in halves with a seam between (option " + BodyOptions.CENTRE_SEAMS + ")");
        }
        if (Gores.of(chosen).any() && !chosen.yes(BodyOptions.HALVED_GORES)) {
            narrower = narrower.with(BodyOptions.HALVED_GORES, true);
            ways.add("cut the gores in halves (option " + BodyOptions.HALVED_GORES + ")");
        }
        return ways.isEmpty() ? Optional.empty() : Optional.of(new Narrower(narrower, String.join(" and ", ways)));
    }
}
