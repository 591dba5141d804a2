package campcloth.fire;

import static campcloth.fire.Draw.always;
import static campcloth.fire.Draw.claim;
import static campcloth.fire.FireFixtures.event;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.fibre.Blend;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * To know less of a cloth is never better. What nobody said is graded as the worst it could be: fibre as unknown, mass at the low end,
 * the face as raised, the fit as loose, the layer as on the skin. A weave that nobody named is taken as plain, which is no worse only
 * where the face is not known either and it is not known to be milled; a finish as none, which is no worse only where
 * neither the face nor any fibre is known.
 */
class FireMissingDataTest {

    private static final FireAdvice ADVICE = new FireAdvice(new FireRules(FireFixtures.FIBRES));

    /** As little as any cloth weighs, g/m2. */
    private static final double LEAST_GSM = 10;

    private static final Blend UNKNOWN = Draw.blend(Map.of("unknown", 100.0));

    @Test
    @DisplayName(
            "Forgetting any part of what is known of a cloth never improves axes, hazard, grade, melt warning or distance")
    void forgettingSomethingNeverImprovesTheGrade() {
        always(4040, draw -> {
            Map<String, Double> shares = draw.shares();
            WornCloth known = draw.cloth(Draw.blend(shares));
            WornCloth less = forgottenInPart(known, shares, draw);
            Exposure exposure = draw.exposure();
            Grades.neverLower(known, less, exposure);
            FireHazard before = FireGrading.grade(known, exposure);
            FireHazard after = FireGrading.grade(less, exposure);
            claim(before.spread() <= after.spread() + 1e-9 && before.melt() <= after.melt() + 1e-9, known, less);
            claim(before.standBackM() <= after.standBackM() + 1e-9, known, less, exposure);
        });
    }

    @Test
    @DisplayName("Forgetting everything of a cloth grades it no better than any cloth at all")
    void aClothOfWhichNothingIsKnownIsGradedNoBetterThanAny() {
        always(4141, draw -> {
            WornCloth known = draw.cloth();
            Grades.neverLower(known, forgotten(known), draw.exposure());
        });
    }

    @Test
    @DisplayName("Under any rules, forgetting never opens the gate, and no rule comes out milder")
    void forgettingNeverOpensTheGate() {
        always(4242, draw -> {
            Map<String, Double> shares = draw.shares();
            WornCloth known = draw.cloth(Draw.blend(shares));
            WornCloth less = draw.coin() ? forgotten(known) : forgottenInPart(known, shares, draw);
            List<SafetyRule> rules = draw.coin() ? draw.rules() : List.of(onTheMake(draw));
            OpenFire fire = draw.fire();
            FireJudgement before = ADVICE.judge(known, event(rules, fire));
            FireJudgement after = ADVICE.judge(less, event(rules, fire));
            claim(before.gate().compareTo(after.gate()) <= 0, known, less, rules, fire);
            claim(before.meltWarning().compareTo(after.meltWarning()) <= 0, known, less, fire);
            for (int i = 0; i < rules.size(); i++) {
                Outcome was = before.rules().get(i).outcome();
                Outcome is = after.rules().get(i).outcome();
                claim(was.compareTo(is) <= 0, known, less, rules.get(i), was, is);
            }
        });
    }

    /** Least mass, or plain faces only. */
    private static SafetyRule onTheMake(Draw draw) {
        return new SafetyRule(
                SafetyRule.Authority.VENUE,
                "Only such cloth",
                Optional.empty(),
                Set.of(),
                draw.coin() ? Optional.of(draw.between(50, 500)) : Optional.empty(),
                draw.coin(),
                draw.coin() ? Optional.of(draw.distanceM()) : Optional.empty());
    }

    private static WornCloth forgotten(WornCloth c) {
        return new WornCloth(UNKNOWN, unweighed(c), Surface.RAISED, Finish.NONE, Weave.PLAIN, Fit.LOOSE, Layer.SKIN);
    }

    private static WornCloth forgottenInPart(WornCloth c, Map<String, Double> shares, Draw draw) {
        boolean noFibre = draw.coin();
        boolean noFace = draw.coin();
        Finish finish = noFibre && noFace && draw.coin() ? Finish.NONE : c.finish();
        boolean noWeave = noFace && finish != Finish.FULLED && draw.coin();
        return new WornCloth(
                noFibre ? UNKNOWN : unnamedInPart(shares, draw),
                draw.coin() ? unweighed(c) : c.weight(),
                noFace ? Surface.RAISED : c.surface(),
                finish,
                noWeave ? Weave.PLAIN : c.weave(),
                draw.coin() ? Fit.LOOSE : c.fit(),
                draw.coin() ? Layer.SKIN : c.layer());
    }

    private static ClothWeight unweighed(WornCloth c) {
        return new ClothWeight(c.weight().givenGsm(), LEAST_GSM);
    }

    /** Some of one fibre is called unknown, or other, or nothing is changed. */
    private static Blend unnamedInPart(Map<String, Double> shares, Draw draw) {
        Map<String, Double> fewer = new TreeMap<>(shares);
        String fibre = draw.one(List.copyOf(shares.keySet()));
        double had = shares.getOrDefault(fibre, 0.0);
        double hidden = draw.coin() ? had : had * draw.percent() / 100;
        fewer.merge(fibre, -hidden, Double::sum);
        fewer.values().removeIf(percent -> percent <= 0);
        fewer.merge(draw.one(FireFixtures.UNNAMED), hidden, Double::sum);
        return Draw.blend(fewer);
    }
}
