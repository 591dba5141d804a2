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
 * A pair of long bands that are wound round the lower legs from the ankle to below the knee. Length after {@link WrapSizes},
 * pieces, seams and edges after {@link WrapCut}. Covered share of the body (project choice after the rule of nines, from
 * memory): both lower legs 16 % at a height of 42 cm.
 */
public final class LegWraps implements Design {

    static final Option WIDTH = Option.cm("bandWidthCm", 10, 5, 20, "how wide the finished bands are");
    static final Option OVERLAP =
            Option.cm("overlapCm", 5, 1, 15, "how much each turn lies over the one before; half the width is usual");
    static final Option TAIL = Option.cm("tailCm", 40, 10, 120, "what is left over below the knee to tuck in or tie");
    static final Option LONGEST = Option.cm(
            LONGEST_PIECE, 400, 40, 1500, "longest piece that is cut; a longer band is pieced with seams across it");
    static final Option ACROSS = Option.yesNo(
            "acrossTheCloth", false, "cut the bands from selvedge to selvedge; they stretch more and need more seams");
    static final Option SEAM = BodyOptions.seam(1.5);

    static final List<Option> OPTIONS = List.of(WIDTH, OVERLAP, TAIL, LONGEST, ACROSS, SEAM);

    private static final double COVERED_PERCENT = 16;
    private static final double USUAL_HEIGHT_CM = 42;
    /** Wound cloth lies about double. */
    private static final double LAYERS = 2;

    @Override
    public String key() {
        return "leg-wraps";
    }

    @Override
    public String name() {
        return "Leg wraps";
    }

    @Override
    public List<Measurement> measurements() {
        return WrapSizes.ALL;
    }

    @Override
    public List<Option> options() {
        return OPTIONS;
    }

    @Override
    public Wear wear(boolean nextToSkin, Measurements wearer) {
        WrapSizes sizes = sizes(wearer);
        double covered = COVERED_PERCENT * Math.min(1, sizes.heightCm() / USUAL_HEIGHT_CM);
        double areaCm2 = 2 * LAYERS * sizes.meanRoundCm() * sizes.heightCm();
        return new Wear(nextToSkin, Layer.OUTER, Fit.CLOSE, false, covered, areaCm2 / 1e4);
    }

    @Override
    public List<String> assumptions(Measurements wearer) {
        return sizes(wearer).notes();
    }

    private static WrapSizes sizes(Measurements wearer) {
        return Refused.within("wearer", () -> WrapSizes.of(wearer));
    }

    @Override
    public Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        WrapSizes sizes = sizes(wearer);
        WrapCut.Choice choice = Refused.within("options", () -> WrapCut.Choice.of(options));
        return new WrapCut(sizes, choice, cloth).garment();
    }

    /** Bands across the cloth are pieced by its width of themselves, and lengthwise they are narrow anyway. */
    @Override
    public Optional<Narrower> narrower(Options options) {
        return Optional.empty();
    }
}
