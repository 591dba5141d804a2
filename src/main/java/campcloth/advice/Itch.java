package campcloth.advice;

import static campcloth.figure.Words.fixed;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.Optional;

/** Does it prickle? The share of fibre ends too coarse to bend, of the layer that touches the skin. */
final class Itch implements Criterion {

    /** More than about 5 % is felt by most people; the scores are project choice. */
    private static final Curve CURVE = Curve.through(0, 100, 2, 85, 5, 50, 10, 25, 20, 8, 40, 0);

    /** Points that new, unwashed bast cloth may lose by scratching: project choice. */
    private static final double BAST_POINTS = 15;

    private static final String UNIT = "% fibres over 30 um";

    @Override
    public String name() {
        return "itch";
    }

    @Override
    public double weight(Demands demands) {
        return demands.onSkin() ? 0.18 : 0;
    }

    @Override
    public Assessment assess(Facts facts) {
        Figure coarse = facts.prickle().coarseEndsPercent();
        Quantity quantity = new Quantity(coarse.value(), coarse.low(), coarse.high());
        if (!facts.wear().nextToSkin()) {
            return new Assessment(
                    name(),
                    100,
                    100,
                    100,
                    Optional.of(quantity),
                    UNIT,
                    "It does not touch the skin: a layer beneath takes the prickle.",
                    coarse.basis());
        }
        double lost = BAST_POINTS * facts.prickle().bastRoughness();
        return new Assessment(
                name(),
                floored(CURVE.score(coarse.value()) - lost),
                floored(CURVE.score(coarse.high()) - lost),
                floored(CURVE.score(coarse.low()) - lost),
                Optional.of(quantity),
                UNIT,
                because(coarse, facts.prickle().bastRoughness()),
                coarse.basis());
    }

    private static String because(Figure coarse, double bastRoughness) {
        String felt = coarse.value() > 5
                ? "most people feel that"
                : coarse.value() > 2 ? "sensitive people feel that" : "hardly anybody feels that";
        String known = coarse.basis() == Basis.ESTIMATED ? " (estimated; feel it on the inner arm)" : "";
        return fixed(coarse.value(), 1) + " % of the fibre ends are too stiff to bend: " + felt + known + "."
                + (bastRoughness > 0.2 ? " New linen and its kin scratch at first and soften with washing." : "");
    }

    private static double floored(double score) {
        return Math.max(0, score);
    }
}
