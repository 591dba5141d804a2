package campcloth.advice;

import static campcloth.figure.Words.fixed;

import campcloth.fibre.FibreFamily;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.Optional;

/** Does it prickle? The share of fibre ends too coarse to bend, of the layer that touches the skin. */
final class Itch implements Criterion {

    /** More than about 5 % is felt by most people; the scores are project choice. */
    private static final Curve CURVE = Curve.through(0, 100, 2, 85, 5, 50, 10, 25, 20, 8, 40, 0);

    /** Points that the scratch of bast fibres takes: new linen little, sackcloth nearly all. Project choice. */
    private static final Curve SCRATCH = Curve.through(0, 0, 0.5, 8, 0.7, 25, 0.9, 70, 1, 85);

    /** Share of the scratch that neck and wrists still feel over a shirt: project choice. */
    private static final double OVER_A_LAYER = 0.5;

    private static final double SCRATCHY = 0.2;
    private static final double SACKCLOTH = 0.8;

    private static final String UNIT = "% fibres over 30 um";

    @Override
    public String name() {
        return "itch";
    }

    @Override
    public double weight(Demands demands) {
        return demands.onSkin() ? 0.18 : 0.05;
    }

    @Override
    public Assessment assess(Facts facts) {
        Figure coarse = facts.prickle().coarseEndsPercent();
        Quantity quantity = new Quantity(coarse.value(), coarse.low(), coarse.high());
        double scratch = SCRATCH.score(facts.prickle().bastRoughness());
        if (!facts.wear().nextToSkin()) {
            double score = overALayer(scratch);
            return new Assessment(
                    name(), score, score, score, Optional.of(quantity), UNIT, overALayer(facts), coarse.basis());
        }
        if (hasGlass(facts)) {
            return new Assessment(
                    name(),
                    0,
                    0,
                    0,
                    Optional.of(quantity),
                    UNIT,
                    "Glass fibre breaks off and irritates the skin.",
                    coarse.basis());
        }
        return new Assessment(
                name(),
                floored(CURVE.score(coarse.value()) - scratch),
                floored(CURVE.score(coarse.high()) - scratch),
                floored(CURVE.score(coarse.low()) - scratch),
                Optional.of(quantity),
                UNIT,
                because(coarse, facts.prickle().bastRoughness()),
                coarse.basis());
    }

    @Override
    public double score(Facts facts) {
        return score(
                facts.prickle().coarseEndsPercent().value(),
                facts.prickle().bastRoughness(),
                hasGlass(facts),
                facts.wear().nextToSkin());
    }

    /**
     * The score alone.
     *
     * @param mineral whether there is glass in it
     */
    static double score(double coarseEndsPercent, double bastRoughness, boolean mineral, boolean nextToSkin) {
        double scratch = SCRATCH.score(bastRoughness);
        if (!nextToSkin) {
            return overALayer(scratch);
        }
        return mineral ? 0 : floored(CURVE.score(coarseEndsPercent) - scratch);
    }

    private static boolean hasGlass(Facts facts) {
        return facts.cloth().blend().percentOf(FibreFamily.MINERAL) > 0;
    }

    private static double overALayer(double scratch) {
        return 100 - OVER_A_LAYER * scratch;
    }

    private static String overALayer(Facts facts) {
        return facts.prickle().bastRoughness() >= SACKCLOTH
                ? "A layer beneath takes the prickle, but sackcloth still scratches neck and wrists."
                : "It does not touch the skin: a layer beneath takes the prickle.";
    }

    private static String because(Figure coarse, double bastRoughness) {
        if (bastRoughness >= SACKCLOTH) {
            return "It scratches like sackcloth: bundles of stiff plant fibre stand out of it. Nobody wears that on the skin.";
        }
        String felt = coarse.value() > 5
                ? "most people feel that"
                : coarse.value() > 2 ? "sensitive people feel that" : "hardly anybody feels that";
        String known = coarse.basis() == Basis.ESTIMATED ? " (estimated; feel it on the inner arm)" : "";
        return fixed(coarse.value(), 1) + " % of the fibre ends are too stiff to bend: " + felt + known + "."
                + (bastRoughness > SCRATCHY
                        ? " Plant fibres such as flax scratch when new and soften with washing."
                        : "");
    }

    private static double floored(double score) {
        return Math.max(0, score);
    }
}
