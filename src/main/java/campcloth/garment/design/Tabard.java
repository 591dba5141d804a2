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
 * A tabard: front and back that hang from the shoulders over other clothes, the sides open and held by ties or a belt, a faced
 * neck. Pieces after {@link TabardCut}.
 *
 * <p>Covered share of the body (project choice): of trunk and legs what its two halves span of {@value #ROUND_CM} cm round.
 */
public final class Tabard implements Design {

    static final String WIDTH = "widthCm";
    static final String TIES = "ties";
    static final String BELT = "belt";

    private static final double ROUND_CM = 100;

    static final Measurement WIDTH_ACROSS = Measurement.usual(
            TapeLine.ACROSS_SHOULDERS,
            WIDTH,
            20,
            120,
            50,
            "across front or back, edge to edge, over what is worn beneath; a little past the shoulders");
    static final Measurement LENGTH = UpperBody.length(95, "to the knee");
    static final Measurement WAIST = Measurement.usual(
            TapeLine.WAIST, "waistCm", 40, 200, 95, "round the waist over what is worn beneath; for the belt");

    static final List<Measurement> MEASUREMENTS = List.of(WIDTH_ACROSS, LENGTH, UpperBody.NECK, UpperBody.HEAD, WAIST);

    static final List<Option> OPTIONS = List.of(
            Option.yesNo(TIES, true, "two pairs of ties at the waist to hold the sides"),
            Option.yesNo(BELT, false, "a belt of the same cloth"),
            BodyOptions.flare(),
            BodyOptions.slit(10),
            BodyOptions.squareNeck(),
            BodyOptions.onePiece(false),
            BodyOptions.shoulderRise(),
            BodyOptions.seam(2),
            BodyOptions.hem(5));

    @Override
    public String key() {
        return "tabard";
    }

    @Override
    public String name() {
        return "Tabard";
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
        TabardSizes sizes = sizes(wearer);
        double share = Math.min(1, 2 * sizes.widthCm() / ROUND_CM);
        double covered = share * (Cover.TRUNK_PERCENT + Cover.legsPercent(sizes.lengthCm()));
        return new Wear(
                nextToSkin, Layer.OUTER, Fit.LOOSE, false, covered, 2 * sizes.widthCm() * sizes.lengthCm() / 1e4);
    }

    @Override
    public List<String> assumptions(Measurements wearer) {
        return sizes(wearer).notes();
    }

    private static TabardSizes sizes(Measurements wearer) {
        return Refused.within("wearer", () -> TabardSizes.of(wearer));
    }

    @Override
    public Garment madeUp(Measurements wearer, Options options, SewnCloth cloth) {
        TabardSizes sizes = sizes(wearer);
        TabardChoice choice = Refused.within("options", () -> TabardChoice.of(options, sizes));
        return new TabardCut(sizes, choice, cloth).garment();
    }

    @Override
    public Optional<Narrower> narrower(Options options) {
        return Optional.empty();
    }
}
