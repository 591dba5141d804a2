package campcloth.fire;

import static campcloth.fire.Draw.always;
import static campcloth.fire.Draw.claim;

import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Layer;
import campcloth.event.Event;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.fibre.Blend;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.RuleOutcome.Outcome;
import campcloth.fire.model.HazardMatrix;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What a treatment against flame may and may not do, for every cloth in every exposure. */
class TreatmentPropertiesTest {

    private static final double ROUNDING = 1e-9;

    @Test
    void onlyADurableOneCountsAndAtMostForOneClassOfSpread() {
        always(8101, draw -> {
            WornCloth cloth = plantish(draw);
            Exposure exposure = draw.exposure();
            FireHazard untreated = FireGrading.grade(cloth, exposure);
            FireHazard durable = grade(cloth, FlameTreatment.DECLARED_DURABLE, exposure);
            for (FlameTreatment hearsay : List.of(FlameTreatment.UNKNOWN, FlameTreatment.DECLARED)) {
                claim(
                        grade(cloth, hearsay, exposure).hazard() == untreated.hazard()
                                && grade(cloth, hearsay, exposure).spread() == untreated.spread(),
                        hearsay,
                        cloth,
                        exposure);
            }
            claim(durable.melt() == untreated.melt(), "melt changed", cloth, exposure);
            claim(durable.meltWarning() == untreated.meltWarning(), "melt warning changed", cloth, exposure);
            claim(durable.standBackM() == untreated.standBackM(), "distance changed", cloth, exposure);
            claim(durable.spread() <= untreated.spread(), "treatment made it worse", cloth, exposure);
            int classes = HazardMatrix.axisClass(untreated.spread()) - HazardMatrix.axisClass(durable.spread());
            claim(classes <= 1, "more than a class", cloth, exposure);
            if (untreated.reach().atLeast(ExposureClass.CONTACT)) {
                claim(durable.hazard() == untreated.hazard(), "counted at the flame", cloth, exposure);
            }
        });
    }

    @Test
    void whatARuleForbidsStaysForbidden() {
        FireAdvice advice = new FireAdvice(new FireRules(FireFixtures.FIBRES));
        always(8202, draw -> {
            WornCloth cloth = plantish(draw);
            SafetyRule rule = draw.coin()
                    ? FireFixtures.forbidden("cotton")
                    : FireFixtures.mostMeltable(draw.between(0, 10), Optional.empty());
            OpenFire fire = draw.fire();
            Event event = FireFixtures.event(List.of(rule), fire);
            FireJudgement untreated = advice.judge(cloth, event);
            FireJudgement durable = advice.judge(cloth.treated(FlameTreatment.DECLARED_DURABLE), event);
            Outcome outcome = untreated.rules().get(0).outcome();
            claim(durable.rules().get(0).outcome() == outcome, cloth, rule, fire);
            claim(outcome != Outcome.FORBIDDEN || durable.gate() == Gate.RULED_OUT, cloth, rule, fire);
        });
    }

    @Test
    void treatedClothKeepsTheOrderOfMassAndPlace() {
        always(8303, draw -> {
            WornCloth heavy = plantish(draw).treated(FlameTreatment.DECLARED_DURABLE);
            double lightGsm = draw.between(10, Math.max(10.001, heavy.weightGsm()));
            WornCloth light = new WornCloth(
                    heavy.blend(),
                    ClothWeight.exactly(Math.min(lightGsm, heavy.weightGsm())),
                    heavy.surface(),
                    heavy.finish(),
                    heavy.weave(),
                    heavy.fit(),
                    heavy.layer(),
                    heavy.treatment());
            Exposure exposure = draw.exposure();
            neverLower(FireGrading.grade(heavy, exposure), FireGrading.grade(light, exposure), heavy, light, exposure);
            neverLower(
                    FireGrading.grade(heavy.lying(Layer.OUTER), exposure),
                    FireGrading.grade(heavy.lying(Layer.SKIN), exposure),
                    heavy,
                    exposure);
            double far = draw.distanceM();
            double near = draw.between(0.1, far);
            neverLower(
                    FireGrading.grade(heavy, new Exposure(exposure.role(), Optional.of(far), exposure.fireKw())),
                    FireGrading.grade(heavy, new Exposure(exposure.role(), Optional.of(near), exposure.fireKw())),
                    heavy,
                    exposure,
                    far,
                    near);
        });
    }

    @Test
    void moreThatMeltsInTreatedClothIsNeverGradedLower() {
        always(8404, draw -> {
            double melting = draw.between(0.01, 60);
            double more = draw.between(melting, 99);
            WornCloth less = draw.cloth(blend("cotton", "polyester", melting)).treated(FlameTreatment.DECLARED_DURABLE);
            WornCloth greater = new WornCloth(
                    blend("cotton", "polyester", more),
                    less.weight(),
                    less.surface(),
                    less.finish(),
                    less.weave(),
                    less.fit(),
                    less.layer(),
                    less.treatment());
            Exposure exposure = draw.exposure();
            neverLower(
                    FireGrading.grade(less, exposure), FireGrading.grade(greater, exposure), less, greater, exposure);
        });
    }

    private static WornCloth plantish(Draw draw) {
        return draw.coin() ? draw.cloth() : draw.cloth(blend("cotton", "elastane", draw.between(0.01, 12)));
    }

    private static Blend blend(String firm, String melting, double percent) {
        return Draw.blend(new TreeMap<>(Map.of(firm, 100 - percent, melting, percent)));
    }

    private static FireHazard grade(WornCloth cloth, FlameTreatment treatment, Exposure exposure) {
        return FireGrading.grade(cloth.treated(treatment), exposure);
    }

    private static void neverLower(FireHazard milder, FireHazard worse, Object... counterexample) {
        claim(
                worse.hazard() >= milder.hazard() - ROUNDING && worse.spread() >= milder.spread() - ROUNDING,
                counterexample);
    }
}
