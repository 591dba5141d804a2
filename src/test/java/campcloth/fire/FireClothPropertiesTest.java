package campcloth.fire;

import static campcloth.fire.Draw.always;
import static campcloth.fire.Draw.claim;
import static campcloth.fire.Grades.neverLower;
import static campcloth.fire.Grades.of;
import static campcloth.fire.Grades.ofWeight;
import static campcloth.fire.Grades.seated;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.fire.FireWarning.Code;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What holds for every cloth: properties 1, 3 to 7 and 10 of the grading. */
class FireClothPropertiesTest {

    private static final List<Finish> UNFILMED =
            Arrays.stream(Finish.values()).filter(f -> !f.closesPores()).toList();

    @Test
    @DisplayName("1 More that melts never lowers hazard, grade or melt warning, and always raises the melt axis")
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
            claim(seated(cloth).melt() < seated(of(cloth, Draw.blend(more))).melt(), "melt does not rise", less, more);
        });
    }

    @Test
    @DisplayName("1 What melts at 5 % or less is still warned of, and the tolerance of labels is told; never above")
    void theToleranceOfLabelsIsToldOfEveryTrace() {
        always(111, draw -> {
            double share = draw.coin() ? draw.between(0.01, 8) : draw.one(List.of(0.01, 4.999, 5.0, 5.001));
            Map<String, Double> shares = Map.of(
                    draw.one(FireFixtures.MELTABLE), share, draw.one(List.of("cotton", "flax", "wool")), 100 - share);
            WornCloth cloth = Grades.made(
                    draw.cloth(Draw.blend(shares)),
                    Surface.PLAIN,
                    draw.one(UNFILMED),
                    draw.one(List.of(Weave.values())));
            Exposure exposure = draw.exposureAtFire();
            claim(FireGrading.grade(cloth, exposure).meltWarning() != MeltWarning.NONE, cloth, exposure);
            boolean told = FireWarnings.of(cloth, exposure).stream()
                    .anyMatch(w -> w.code() == Code.LABEL && w.text().equals(FireCautions.LABEL_TOLERANCE));
            claim(told == cloth.meltablePercent() <= 5, cloth, exposure);
        });
    }

    @Test
    @DisplayName("3 Lighter cloth is never graded lower, other things equal")
    void lighterClothIsNeverGradedLower() {
        always(505, draw -> {
            WornCloth heavy = draw.cloth();
            WornCloth light = ofWeight(heavy, draw.between(10, heavy.weightGsm()));
            neverLower(heavy, light, draw.exposure());
            claim(seated(heavy).spread() <= seated(light).spread(), heavy, light);
        });
    }

    @Test
    @DisplayName("4 Raised is never graded below plain, open or filmed never below close, whatever else the cloth is")
    void raisedOpenOrFilmedClothIsNeverGradedLower() {
        always(606, draw -> {
            WornCloth any = draw.cloth();
            WornCloth c = Grades.made(any, Surface.PLAIN, Finish.NONE, Weave.PLAIN);
            Exposure exposure = draw.exposure();
            neverLower(
                    Grades.made(any, Surface.PLAIN, any.finish(), any.weave()),
                    Grades.made(any, Surface.RAISED, any.finish(), any.weave()),
                    exposure);
            neverLower(c, Grades.made(c, Surface.PLAIN, Finish.BRUSHED, Weave.PLAIN), exposure);
            neverLower(c, Grades.made(c, Surface.PLAIN, Finish.NONE, Weave.OPEN_PLAIN), exposure);
            neverLower(c, Grades.made(c, Surface.PLAIN, Finish.NONE, Weave.FUR), exposure);
            neverLower(c, Grades.made(c, Surface.PLAIN, Finish.COATED, Weave.PLAIN), exposure);
            neverLower(c, Grades.made(c, Surface.PLAIN, Finish.WAXED, Weave.PLAIN), exposure);
        });
    }

    @Test
    @DisplayName("4 Loose is never graded below close, whatever else the cloth is")
    void looseIsNeverGradedLower() {
        always(616, draw -> {
            WornCloth c = draw.cloth();
            neverLower(Grades.fitting(c, Fit.CLOSE), Grades.fitting(c, Fit.LOOSE), draw.exposure());
        });
    }

    @Test
    @DisplayName("5 On the skin is never graded below the middle layer, nor that below the outer")
    void nearerTheSkinIsNeverGradedLower() {
        always(707, draw -> {
            WornCloth c = draw.cloth();
            Exposure exposure = draw.exposure();
            neverLower(Grades.inLayer(c, Layer.OUTER), Grades.inLayer(c, Layer.MIDDLE), exposure);
            neverLower(Grades.inLayer(c, Layer.MIDDLE), Grades.inLayer(c, Layer.SKIN), exposure);
        });
    }

    @Test
    @DisplayName(
            "6 Plant fibre with 10 % or more that melts, or the other way round, never spreads less than the worse of the two")
    void blendSpreadsNoLessThanTheWorseOfItsFibres() {
        always(808, draw -> {
            String plant = draw.one(FireFixtures.CELLULOSIC);
            String synthetic = draw.one(FireFixtures.MELTABLE);
            double share = draw.coin() ? draw.one(List.of(10.0, 35.0, 50.0, 90.0)) : draw.between(10, 90);
            WornCloth blend = draw.cloth(Draw.blend(Map.of(plant, 100 - share, synthetic, share)));
            double worse = Math.max(
                    seated(of(blend, Draw.blend(Map.of(plant, 100.0)))).spread(),
                    seated(of(blend, Draw.blend(Map.of(synthetic, 100.0)))).spread());
            claim(seated(blend).spread() >= worse - 1e-9, blend, worse);
        });
    }

    @Test
    @DisplayName("6 On the melt axis such a blend rises with the share that melts")
    void meltOfABlendRisesWithItsShare() {
        always(818, draw -> {
            String plant = draw.one(FireFixtures.CELLULOSIC);
            String synthetic = draw.one(FireFixtures.MELTABLE);
            double more = draw.between(1, 99);
            double less = draw.between(0.5, more - 0.4);
            WornCloth one = draw.cloth(Draw.blend(Map.of(plant, 100 - less, synthetic, less)));
            WornCloth other = of(one, Draw.blend(Map.of(plant, 100 - more, synthetic, more)));
            claim(seated(one).melt() < seated(other).melt(), one, other);
        });
    }

    @Test
    @DisplayName("7 Unknown and other are graded as the worst plausible fibre: naming them never raises anything")
    void whatIsUnnamedIsGradedAsTheWorstItCouldBe() {
        always(909, draw -> {
            String hidden = draw.one(FireFixtures.UNNAMED);
            Map<String, Double> unnamed = draw.shares();
            unnamed.merge(hidden, 30.0, Double::sum);
            unnamed.replaceAll((key, percent) -> percent / 1.3);
            Map<String, Double> named = new TreeMap<>(unnamed);
            String known = draw.one(draw.one(List.of(
                    FireFixtures.CELLULOSIC, FireFixtures.PROTEIN, FireFixtures.MELTABLE, FireFixtures.RESISTANT)));
            named.merge(known, named.remove(hidden), Double::sum);
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
    @DisplayName("7 A cloth of nothing but unknown or other is never graded below one of any known fibre")
    void anUnnamedClothIsNeverGradedBelowAnyNamedOne() {
        always(919, draw -> {
            WornCloth named = draw.cloth();
            WornCloth unnamed = of(named, Draw.blend(Map.of(draw.one(FireFixtures.UNNAMED), 100.0)));
            neverLower(named, unnamed, draw.exposure());
        });
    }

    @Test
    @DisplayName("10 Heavy plain wool is never graded worse than any cloth no heavier")
    void heavyPlainWoolIsNeverGradedWorseThanAnyClothNoHeavier() {
        always(1010, draw -> {
            WornCloth other = ofWeight(draw.cloth(), draw.between(10, 450));
            WornCloth wool = FireFixtures.plain("wool 100", 450);
            neverLower(wool, other, draw.exposure());
        });
    }
    /** A fifth of plant fibre or silk, or of what resists flame, leaves it wool-rich. */
    @Test
    @DisplayName("10 Cloth with 80 % wool or more, heavy and plain, grades best of all cloth no heavier")
    void woolRichHeavyPlainClothGradesBest() {
        always(1020, draw -> {
            double rest = draw.between(0, 20);
            String other = draw.one(List.of("cotton", "flax", "viscose", "silk", "aramid"));
            double gsm = draw.between(373, 700);
            WornCloth rich = FireFixtures.plain("wool 100", gsm);
            rich = of(rich, Draw.blend(Map.of("wool", 100 - rest, other, rest)));
            WornCloth rival = ofWeight(draw.cloth(), draw.between(10, gsm));
            Exposure exposure = draw.exposure();
            FireHazard best = FireGrading.grade(rich, exposure);
            FireHazard second = FireGrading.grade(rival, exposure);
            claim(best.grade().compareTo(second.grade()) <= 0, rich, rival, exposure);
            claim(best.meltWarning() == MeltWarning.NONE, rich, exposure);
            boolean burnsAsMuch = rival.fuelPercent() >= rich.fuelPercent();
            claim(!burnsAsMuch || best.hazard() <= second.hazard() + 1e-9, rich, rival, exposure);
        });
    }

    @Test
    @DisplayName("10 With up to a fifth that melts, it still grades best of all that melt as much")
    void woolRichClothWithSomeThatMeltsGradesBestOfThoseThatMeltAsMuch() {
        always(1030, draw -> {
            double melting = draw.between(0.5, 20);
            double gsm = draw.between(373, 700);
            WornCloth rich = of(
                    FireFixtures.plain("wool 100", gsm),
                    Draw.blend(Map.of("wool", 100 - melting, draw.one(FireFixtures.MELTABLE), melting)));
            WornCloth rival = ofWeight(draw.cloth(), draw.between(10, gsm));
            if (rival.meltablePercent() >= rich.meltablePercent()) {
                neverLower(rich, rival, draw.exposure());
            }
        });
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
}
