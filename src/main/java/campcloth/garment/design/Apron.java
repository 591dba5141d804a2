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
import campcloth.garment.TapeLine;
import java.util.List;
import java.util.Optional;

/**
 * An apron from the waist down, plain or gathered to its band, with ties, and if wanted a bib with straps that cross behind.
 * Sizes and pieces after {@link ApronCut}, seams and hems after {@link ApronSewing}.
 *
 * <p>Covered share of the body (project choice): its own area as worn, without a bib and without gathers, against 1.8 m2 of
 * body.
 */
public final class Apron implements Design {

    static final Measurement WAIST =
            Measurement.usual(TapeLine.WAIST, "waistCm", 40, 180, 85, "round the waist, over what is worn below");
    static final Measurement LENGTH =
            Measurement.usual(TapeLine.WAIST_TO_HEM, "lengthCm", 20, 120, 65, "from the waist to the hem; to the knee");
    static final Measurement BIB_HEIGHT =
            Measurement.usual(TapeLine.BIB, "bibHeightCm", 10, 50, 28, "from the waist up to the bib's upper edge");
    static final Measurement STRAP = Measurement.usual(
            TapeLine.STRAP,
            "strapCm",
            30,
            150,
            90,
            "from the bib over the shoulder to the waistband at the other side");

    static final double LEAST_WIDTH_CM = 25;

    static final Option WIDTH = Option.cm("widthCm", 60, LEAST_WIDTH_CM, 150, "how wide it is below the band as worn");
    static final Option GATHERED = Option.cm("gatheredCm", 0, 0, 150, "how much more width is gathered to the band");
    static final Option BIB = Option.yesNo("bib", false, "a bib with straps");
    static final Option BIB_WIDTH = Option.cm("bibWidthCm", 28, 15, 50, "how wide the bib is");
    static final Option BAND = Option.cm("bandWidthCm", 4, 2, 10, "how wide the band is");
    static final Option SEAM = Option.cm(
            SEAM_ALLOWANCE,
            2,
            1.2,
            4,
            "cloth beyond each seam line and each open edge; 0.5 cm more is left on cloth that frays");
    static final Option HEM = Option.cm(HEM_ALLOWANCE, 4, 2, 10, "most cloth that is left for the hem");

    private static final List<Measurement> MEASUREMENTS = List.of(WAIST, LENGTH, BIB_HEIGHT, STRAP);
    private static final List<Option> OPTIONS = List.of(WIDTH, GATHERED, BIB, BIB_WIDTH, BAND, SEAM, HEM);
    private static final double BODY_CM2 = 1.8e4;

    @Override
    public String key() {
        return "apron";
    }

    @Override
    public String name() {
        return "Apron";
    }

    @Override
    public List<Measurement> measurements() {
        return MEASUREMENTS;
    }

    @Override
    public List<Option> options() {
        return OPTIONS;
    }

    @Override
    public Wear wear(boolean nextToSkin, Measurements wearer) {
        double areaCm2 = usual(wearer).lengthCm() * Options.USUAL.cm(WIDTH);
        return new Wear(nextToSkin, Layer.OUTER, Fit.LOOSE, false, 100 * areaCm2 / BODY_CM2, areaCm2 / 1e4);
    }

    @Override
    public List<String> assumptions(Measurements wearer) {
        return usual(wearer).notes();
    }

    private ApronSizes usual(Measurements wearer) {
        return Refused.within("wearer", () -> ApronSizes.of(wearer, MEASUREMENTS));
    }

    @Override
    public Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        ApronSizes sizes = usual(wearer);
        return Refused.within(
                "options", () -> ApronSewing.garment(ApronCut.of(sizes, new Chosen(OPTIONS, options), cloth)));
    }

    @Override
    public Optional<Narrower> narrower(Options options) {
        return Optional.empty();
    }
}
