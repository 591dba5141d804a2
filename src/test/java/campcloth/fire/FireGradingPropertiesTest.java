package campcloth.fire;

import static campcloth.fire.Draw.always;
import static campcloth.fire.Draw.claim;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireRole;
import campcloth.fibre.Blend;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What holds for every cloth in every exposure. */
class FireGradingPropertiesTest {

    @Test
    void moreThatMeltsIsNeverGradedLower() {
        always(101, draw -> {
            Map<String, Double> less = draw.shares();
            List<String> firm = less.keySet().stream()
                    .filter(k -> !FireFixtures.MELTABLE.contains(k) && !FireFixtures.UNNAMED.contains(k))
                    .toList();
            if (firm.isEmpty()) {
                return;
            }
            Map<String, Double> more = moved(less, draw.one(firm), draw.one(FireFixtures.MELTABLE), draw);
            WornCloth cloth = draw.cloth(Draw.blend(less));
            neverLower(cloth, of(cloth, Draw.blend(more)), draw.exposure());
            claim(grade(cloth).melt() < grade(of(cloth, Draw.blend(more))).melt(), "melt does not rise", less, more);
        });
    }

    @Test
    void closerToTheFireIsNeverGradedLower() {
        always(202, draw -> {
            double far = draw.distanceM();
            double near = draw.between(0.1, far);
            FireRole role = draw.role();
            Optional<Double> kw = draw.perhapsFireKw();
            neverLower(
                    draw.cloth(), new Exposure(role, Optional.of(far), kw), new Exposure(role, Optional.of(near), kw));
        });
    }

    /** From where people sit at the nearest; beyond 300 kW nobody stays there, and that is never presumed. */
    @Test
    void aDistanceThatNobodyToldIsNeverGradedLowerThanOneThatIsTold() {
        always(1414, draw -> {
            FireRole role = draw.roleAtFire();
            Optional<Double> fireKw = Optional.of(draw.between(5, 300));
            Exposure told = new Exposure(role, Optional.of(draw.between(1.5, 20)), fireKw);
            neverLower(draw.cloth(), told, new Exposure(role, Optional.empty(), fireKw));
        });
    }

    @Test
    void largerFireIsNeverGradedLower() {
        always(303, draw -> {
            double large = draw.between(1, 1000);
            double small = draw.between(1, large);
            FireRole role = draw.role();
            Optional<Double> metres = draw.perhapsDistanceM();
            neverLower(
                    draw.cloth(),
                    new Exposure(role, metres, Optional.of(small)),
                    new Exposure(role, metres, Optional.of(large)));
        });
    }

    @Test
    void riskierRoleIsNeverGradedLower() {
        always(404, draw -> {
            FireRole one = draw.role();
            FireRole other = draw.role();
            FireRole milder = one.compareTo(other) <= 0 ? one : other;
            FireRole riskier = milder == one ? other : one;
            Optional<Double> metres = draw.perhapsDistanceM();
            Optional<Double> kw = draw.perhapsFireKw();
            neverLower(draw.cloth(), new Exposure(milder, metres, kw), new Exposure(riskier, metres, kw));
        });
    }

    @Test
    void lighterClothIsNeverGradedLower() {
        always(505, draw -> {
            WornCloth heavy = draw.cloth();
            WornCloth light = ofWeight(heavy, draw.between(10, heavy.weightGsm()));
            neverLower(heavy, light, draw.exposure());
            claim(grade(heavy).spread() <= grade(light).spread(), heavy, light);
        });
    }

    @Test
    void raisedOpenLooseOrFilmedClothIsNeverGradedLower() {
        always(606, draw -> {
            WornCloth c = new WornCloth(
                    Draw.blend(draw.shares()),
                    draw.weightGsm(),
                    Surface.PLAIN,
                    Finish.NONE,
                    Weave.PLAIN,
                    Fit.CLOSE,
                    draw.one(List.of(Layer.values())));
            Exposure exposure = draw.exposure();
            neverLower(c, made(c, Surface.RAISED, Finish.NONE, Weave.PLAIN, Fit.CLOSE), exposure);
            neverLower(c, made(c, Surface.PLAIN, Finish.BRUSHED, Weave.PLAIN, Fit.CLOSE), exposure);
            neverLower(c, made(c, Surface.PLAIN, Finish.NONE, Weave.OPEN_PLAIN, Fit.CLOSE), exposure);
            neverLower(c, made(c, Surface.PLAIN, Finish.NONE, Weave.FUR, Fit.CLOSE), exposure);
            neverLower(c, made(c, Surface.PLAIN, Finish.NONE, Weave.PLAIN, Fit.LOOSE), exposure);
            neverLower(c, made(c, Surface.PLAIN, Finish.COATED, Weave.PLAIN, Fit.CLOSE), exposure);
            neverLower(c, made(c, Surface.PLAIN, Finish.WAXED, Weave.PLAIN, Fit.CLOSE), exposure);
        });
    }

    @Test
    void nearerTheSkinIsNeverGradedLower() {
        always(707, draw -> {
            WornCloth c = draw.cloth();
            Exposure exposure = draw.exposure();
            neverLower(inLayer(c, Layer.OUTER), inLayer(c, Layer.MIDDLE), exposure);
            neverLower(inLayer(c, Layer.MIDDLE), inLayer(c, Layer.SKIN), exposure);
        });
    }

    @Test
    void blendSpreadsNoLessThanTheWorseOfItsFibres() {
        always(808, draw -> {
            String plant = draw.one(FireFixtures.CELLULOSIC);
            String synthetic = draw.one(FireFixtures.MELTABLE);
            double share = draw.coin() ? draw.one(List.of(10.0, 35.0, 50.0, 90.0)) : draw.between(10, 90);
            WornCloth blend = draw.cloth(Draw.blend(Map.of(plant, 100 - share, synthetic, share)));
            double worse = Math.max(
                    grade(of(blend, Draw.blend(Map.of(plant, 100.0)))).spread(),
                    grade(of(blend, Draw.blend(Map.of(synthetic, 100.0)))).spread());
            claim(grade(blend).spread() >= worse - 1e-9, blend, worse);
        });
    }

    @Test
    void namingAnUnknownFibreNeverRaisesAnything() {
        always(909, draw -> {
            Map<String, Double> unnamed = draw.shares();
            unnamed.merge("unknown", 30.0, Double::sum);
            unnamed.replaceAll((key, percent) -> percent / 1.3);
            Map<String, Double> named = new TreeMap<>(unnamed);
            String known = draw.one(draw.one(List.of(
                    FireFixtures.CELLULOSIC, FireFixtures.PROTEIN, FireFixtures.MELTABLE, FireFixtures.RESISTANT)));
            named.merge(known, named.remove("unknown"), Double::sum);
            WornCloth cloth = draw.cloth(Draw.blend(unnamed));
            Exposure exposure = draw.exposure();
            neverLower(of(cloth, Draw.blend(named)), cloth, exposure);
            claim(
                    FireGrading.grade(of(cloth, Draw.blend(named)), exposure).standBackM()
                            <= FireGrading.grade(cloth, exposure).standBackM(),
                    named);
        });
    }

    @Test
    void heavyPlainWoolIsNeverGradedWorseThanAnyClothNoHeavier() {
        always(1010, draw -> {
            WornCloth other = ofWeight(draw.cloth(), draw.between(10, 450));
            WornCloth wool = FireFixtures.plain("wool 100", 450);
            neverLower(wool, other, draw.exposure());
        });
    }

    @Test
    void withoutAPlaceAtAFireThereIsNoHazardAndNoWarning() {
        always(1111, draw -> {
            Exposure away = new Exposure(FireRole.NONE, draw.perhapsDistanceM(), draw.perhapsFireKw());
            FireHazard hazard = FireGrading.grade(draw.cloth(), away);
            claim(hazard.hazard() == 0 && hazard.grade() == FireGrade.LOW, hazard);
            claim(hazard.meltWarning() == MeltWarning.NONE && hazard.fluxKwM2().isEmpty(), hazard);
        });
    }

    @Test
    void hazardIsNeverBelowEitherAxisAloneAndLiesInTheQuarterOfItsGrade() {
        always(1212, draw -> {
            FireHazard hazard = FireGrading.grade(draw.cloth(), draw.exposure());
            claim(hazard.hazard() >= hazard.spreadHazard() && hazard.hazard() >= hazard.meltHazard(), hazard);
            claim((int) (hazard.hazard() / 25) == hazard.grade().ordinal(), hazard);
            claim(hazard.spread() >= 0 && hazard.spread() <= 100 && hazard.melt() >= 0 && hazard.melt() <= 100, hazard);
        });
    }

    @Test
    void polyCottonAtTheFireIsAlwaysWarnedOfAndWorseThanWool() {
        always(1313, draw -> {
            double share = draw.between(10, 90);
            WornCloth blend = draw.cloth(Draw.blend(Map.of("polyester", share, "cotton", 100 - share)));
            Exposure exposure = new Exposure(draw.roleAtFire(), draw.perhapsDistanceM(), draw.perhapsFireKw());
            FireHazard hazard = FireGrading.grade(blend, exposure);
            MeltWarning least = exposure.role() == FireRole.PASSING ? MeltWarning.NOTE : MeltWarning.WARN;
            claim(hazard.meltWarning().compareTo(least) >= 0, blend, exposure);
            FireHazard wool = FireGrading.grade(of(blend, Draw.blend(Map.of("wool", 100.0))), exposure);
            claim(hazard.hazard() > wool.hazard(), blend, exposure, wool);
        });
    }

    private static FireHazard grade(WornCloth cloth) {
        return FireGrading.grade(cloth, FireFixtures.at(FireRole.SEATED, 2));
    }

    private static void neverLower(WornCloth milder, WornCloth worse, Exposure exposure) {
        neverLower(FireGrading.grade(milder, exposure), FireGrading.grade(worse, exposure), milder, worse, exposure);
    }

    private static void neverLower(WornCloth cloth, Exposure milder, Exposure worse) {
        neverLower(FireGrading.grade(cloth, milder), FireGrading.grade(cloth, worse), cloth, milder, worse);
    }

    private static void neverLower(FireHazard milder, FireHazard worse, Object... of) {
        claim(
                milder.hazard() <= worse.hazard() + 1e-9
                        && milder.grade().compareTo(worse.grade()) <= 0
                        && milder.meltWarning().compareTo(worse.meltWarning()) <= 0,
                List.of(of),
                milder,
                worse);
    }

    private static Map<String, Double> moved(Map<String, Double> shares, String from, String to, Draw draw) {
        Map<String, Double> moved = new TreeMap<>(shares);
        double had = shares.getOrDefault(from, 0.0);
        double part = draw.coin() ? had : had * draw.percent() / 100;
        moved.merge(to, part, Double::sum);
        if (part >= had) {
            moved.remove(from);
        } else {
            moved.put(from, had - part);
        }
        return moved;
    }

    private static WornCloth of(WornCloth c, Blend blend) {
        return new WornCloth(blend, c.weightGsm(), c.surface(), c.finish(), c.weave(), c.fit(), c.layer());
    }

    private static WornCloth ofWeight(WornCloth c, double weightGsm) {
        return new WornCloth(c.blend(), weightGsm, c.surface(), c.finish(), c.weave(), c.fit(), c.layer());
    }

    private static WornCloth inLayer(WornCloth c, Layer layer) {
        return new WornCloth(c.blend(), c.weightGsm(), c.surface(), c.finish(), c.weave(), c.fit(), layer);
    }

    private static WornCloth made(WornCloth c, Surface surface, Finish finish, Weave weave, Fit fit) {
        return new WornCloth(c.blend(), c.weightGsm(), surface, finish, weave, fit, c.layer());
    }
}
