package campcloth.garment.design;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Wear;
import campcloth.figure.Refused;
import campcloth.garment.Design;
import campcloth.garment.Garment;
import campcloth.garment.HemEdge;
import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import campcloth.garment.Option;
import campcloth.garment.Options;
import campcloth.garment.SewnCloth;
import java.util.List;
import java.util.Optional;

/**
 * A straight tunic in two halves with shoulder seams and two sleeves set on flat, a round neck with a slit. Sizes after
 * {@link TunicSizes}, pieces after {@link TunicCut}, seams and hems after {@link TunicSewing}.
 *
 * <p>The plain tunic is straight, so that front and back can lie side by side; {@code flareCm} widens each half to the hem
 * on both sides (5 cm is usual), which takes that away. It is not a one-piece cut over the shoulder.
 *
 * <p>Covered share of the body (project choice after the rule of nines, from memory): trunk 36 %, arms without hands 14 % at
 * a full sleeve, legs 36 % evenly from 65 cm below the shoulder to 137 cm; 65 % for a tunic to the knee.
 */
public final class Tunic implements Design {

    static final Option SIDE_SPLITS = Option.yesNo("sideSplits", false, "leave the side seams open below, for stride");
    static final Option SPLIT_LENGTH = Option.cm("splitLengthCm", 20, 5, 100, "how long each side split is");
    static final Option FLARE = Option.cm("flareCm", 0, 0, 40, "how much wider each half is at the hem on each side");
    static final Option SLIT = Option.cm("neckSlitCm", 8, 0, 40, "front slit below the neck circle");
    static final Option CENTRE_SEAMS = Option.yesNo(
            "centreSeams", false, "cut front and back in two halves each with a seam between, for narrow cloth");

    static final Option SEAM = Option.cm(
            SEAM_ALLOWANCE, 2, 1.2, 4, "cloth beyond each seam line; 0.5 cm more is left on cloth that frays");
    static final Option HEM = Option.cm(
            HEM_ALLOWANCE, HemEdge.Kind.BODY.usualAllowanceCm(), 2, 10, "most cloth that is left for the hem");
    static final Option CUFF = Option.cm(
            CUFF_ALLOWANCE,
            HemEdge.Kind.CUFF.usualAllowanceCm(),
            2,
            10,
            "most cloth that is left at the sleeves' ends");

    private static final List<Option> OPTIONS =
            List.of(SIDE_SPLITS, SPLIT_LENGTH, FLARE, SLIT, CENTRE_SEAMS, SEAM, HEM, CUFF);

    private static final double TRUNK_PERCENT = 36;
    private static final double ARMS_PERCENT = 14;
    private static final double LEGS_PERCENT = 36;
    private static final double FULL_SLEEVE_CM = 53;
    private static final double CROTCH_BELOW_SHOULDER_CM = 65;
    private static final double LEG_CM = 72;

    @Override
    public String key() {
        return "tunic";
    }

    @Override
    public String name() {
        return "Tunic";
    }

    @Override
    public List<Measurement> measurements() {
        return TunicSizes.ALL;
    }

    @Override
    public List<Option> options() {
        return OPTIONS;
    }

    @Override
    public Wear wear(boolean nextToSkin, Measurements wearer) {
        TunicSizes sizes = worn(wearer);
        double arms = ARMS_PERCENT * Math.min(1, sizes.sleeveLengthCm() / FULL_SLEEVE_CM);
        double legs = LEGS_PERCENT * Math.min(1, Math.max(0, (sizes.lengthCm() - CROTCH_BELOW_SHOULDER_CM) / LEG_CM));
        double areaCm2 = sizes.chestCm() * sizes.lengthCm()
                + (sizes.sleeveTopWidthCm() + sizes.cuffWidthCm()) * sizes.sleeveLengthCm();
        return new Wear(nextToSkin, Layer.OUTER, Fit.LOOSE, false, TRUNK_PERCENT + arms + legs, areaCm2 / 1e4);
    }

    @Override
    public List<String> assumptions(Measurements wearer) {
        return worn(wearer).notes();
    }

    private static TunicSizes worn(Measurements wearer) {
        return Refused.within(
                "wearer", () -> TunicSizes.usualFor(wearer, SewnCloth.usual().thicknessMm()));
    }

    @Override
    public Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        TunicSizes sizes = Refused.within("wearer", () -> TunicSizes.of(wearer, cloth.thicknessMm()));
        TunicChoice choice = Refused.within("options", () -> TunicChoice.of(options, sizes));
        return TunicSewing.garment(sizes, choice, cloth);
    }

    @Override
    public Optional<Narrower> narrower(Options options) {
        if (options.yes(CENTRE_SEAMS)) {
            return Optional.empty();
        }
        return Optional.of(new Narrower(
                options.with(CENTRE_SEAMS.key(), true),
                "cut front and back in halves with a seam between (option " + CENTRE_SEAMS.key() + ")"));
    }
}
