package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Outfit;
import campcloth.cloth.Wear;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort.Heat;
import campcloth.comfort.SpellComfort.Warmth;
import campcloth.comfort.SpellComfort.WetLoss;
import campcloth.event.Spell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What is told from the lattice is told by the models themselves, within bounds; cases are generated, a failure tells its seed and
 * its case.
 */
class GridPhysicsTest {

    private static final long SEED = 1_377L;
    private static final int EVENTS = 250;
    private static final int CLOTHS = 40;

    private static final double CLO = 0.03;
    private static final double WETTEDNESS = 0.01;
    private static final double HOURS = 0.05;
    private static final double DRYING_WM2 = 0.5;
    private static final double VOTE = 0.02;
    private static final double SKIN_K = 0.3;
    private static final double CORE_K = 0.1;
    private static final double SET_K = 0.3;

    private int heats;
    private int votes;
    private int wet;

    @Test
    void tenThousandClothsDoAsTheModelsThemselvesSay() {
        for (int event = 0; event < EVENTS; event++) {
            LatticeDraw draw = new LatticeDraw(SEED + event);
            List<Spell> spells = List.of(draw.spell());
            Wear wear = draw.wear();
            Outfit outfit = draw.outfit();
            Comfort lattice = Comfort.in(spells, Optional.empty()).wearing(outfit);
            Comfort models = Comfort.directly(spells, Optional.empty()).wearing(outfit);
            for (int i = 0; i < CLOTHS; i++) {
                Cloth cloth = draw.cloth();
                String which = "seed " + (SEED + event) + ", cloth " + i + ": " + cloth.figures() + ", " + spells + ", "
                        + wear + ", " + outfit.parts();
                compare(
                        which,
                        lattice.of(cloth, wear).get(0),
                        models.of(cloth, wear).get(0));
            }
        }
        assertThat(heats).as("cloths for which the two-node model holds").isGreaterThan(EVENTS * CLOTHS / 3);
        assertThat(votes).as("cloths for which there is a vote").isGreaterThan(100);
        assertThat(wet).as("wet cloths").isGreaterThan(1000);
    }

    private void compare(String which, SpellComfort lattice, SpellComfort models) {
        warmth(which, lattice.warmth(), models.warmth());
        heat(which, lattice.heat(), models.heat());
        votes += near(which + " vote", lattice.vote(), models.vote(), VOTE) ? 1 : 0;
        assertThat(lattice.needs()).as(which).isEqualTo(models.needs());
    }

    private void warmth(String which, Warmth lattice, Warmth models) {
        near(which + " clo", lattice.resultantClo(), models.resultantClo(), CLO);
        near(which + " margin", lattice.marginClo(), models.marginClo(), CLO);
        near(which + " minimal margin", lattice.minimalMarginClo(), models.minimalMarginClo(), CLO);
        near(which + " hours", lattice.hoursUntilCooling(), models.hoursUntilCooling(), HOURS);
        assertThat(lattice.wet().isPresent()).as(which).isEqualTo(models.wet().isPresent());
        if (models.wet().isPresent()) {
            wet++;
            WetLoss one = lattice.wet().orElseThrow();
            WetLoss other = models.wet().orElseThrow();
            near(which + " lost", one.lostClo(), other.lostClo(), CLO);
            near(which + " drying", one.dryingWm2(), other.dryingWm2(), DRYING_WM2);
        }
    }

    private void heat(String which, Heat lattice, Heat models) {
        heats += near(which + " wettedness", lattice.wettedness(), models.wettedness(), WETTEDNESS) ? 1 : 0;
        double most = models.wettednessAsked().inRange().map(Value::high).orElse(1.0);
        near(
                which + " wettedness asked",
                lattice.wettednessAsked(),
                models.wettednessAsked(),
                WETTEDNESS * Math.max(1, most));
        near(which + " skin", lattice.skinC(), models.skinC(), SKIN_K);
        near(which + " core", lattice.coreC(), models.coreC(), CORE_K);
        near(which + " SET", lattice.standardEffectiveC(), models.standardEffectiveC(), SET_K);
        assertThat(lattice.wettednessLimit()).as(which).isEqualTo(models.wettednessLimit());
        assertThat(lattice.vapourResistanceM2PaW()).as(which).isEqualTo(models.vapourResistanceM2PaW());
    }

    /** Out of range by both or by none; whether by none. */
    private static boolean near(String which, Reading lattice, Reading models, double bound) {
        if (lattice instanceof Value one && models instanceof Value other) {
            assertThat(Math.abs(one.value() - other.value())).as(which).isLessThan(bound);
            assertThat(Math.abs(one.low() - other.low())).as(which + ", low").isLessThan(bound);
            assertThat(Math.abs(one.high() - other.high())).as(which + ", high").isLessThan(bound);
            return true;
        }
        assertThat(lattice).as(which).isEqualTo(models);
        return false;
    }

    @Test
    void anAnswerDoesNotDependOnWhatWasAskedBefore() {
        for (int event = 0; event < EVENTS; event++) {
            LatticeDraw draw = new LatticeDraw(SEED + event);
            List<Spell> spells = List.of(draw.spell());
            Wear wear = draw.wear();
            List<Cloth> cloths = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                cloths.add(draw.cloth());
            }
            Comfort asked = Comfort.in(spells);
            cloths.forEach(cloth -> asked.of(cloth, wear));
            Cloth last = cloths.get(cloths.size() - 1);
            assertThat(asked.of(last, wear)).isEqualTo(Comfort.in(spells).of(last, wear));
        }
    }

    /** The model itself swings a little where the skin becomes as wet as it can; the lattice may add half of its bound to that. */
    @Test
    void clothThatBreathesWorseWetsTheSkinLessNowhereButWhereTheModelItselfSwings() {
        for (int event = 0; event < EVENTS; event++) {
            LatticeDraw draw = new LatticeDraw(SEED + event);
            List<Spell> spells = List.of(draw.spell());
            Wear wear = draw.wear();
            Comfort lattice = Comfort.in(spells);
            Comfort models = Comfort.directly(spells, Optional.empty());
            double wettest = 0;
            double wettestByModels = 0;
            for (int step = 0; step < 60; step++) {
                Cloth cloth = Samples.cloth("close", 0.8, 150, 2 * Math.pow(1.05, step));
                double wet = wettedness(lattice.of(cloth, wear).get(0), wettest);
                double wetByModels = wettedness(models.of(cloth, wear).get(0), wettestByModels);
                assertThat(wettest - wet)
                        .as("seed %d, step %d: %s, %s", SEED + event, step, spells, wear)
                        .isLessThan(Math.max(0, wettestByModels - wetByModels) + WETTEDNESS / 2);
                wettest = Math.max(wettest, wet);
                wettestByModels = Math.max(wettestByModels, wetByModels);
            }
        }
    }

    private static double wettedness(SpellComfort spell, double elseThat) {
        return spell.heat().wettedness().inRange().map(Value::value).orElse(elseThat);
    }

    @Test
    void thickerClothIsNeverColderWetOrDry() {
        for (int event = 0; event < EVENTS; event++) {
            LatticeDraw draw = new LatticeDraw(SEED + event);
            List<Spell> spells = List.of(draw.spell());
            Wear wear = draw.wear();
            Comfort lattice = Comfort.in(spells);
            double warmest = 0;
            for (int step = 0; step < 60; step++) {
                Cloth cloth = Samples.cloth("thick", 0.3 + 0.05 * step, 150, 8);
                Reading have = lattice.of(cloth, wear).get(0).warmth().resultantClo();
                double clo = have.inRange().map(Value::value).orElse(warmest);
                assertThat(clo)
                        .as("seed %d, step %d: %s, %s", SEED + event, step, spells, wear)
                        .isGreaterThanOrEqualTo(warmest - 1e-5);
                warmest = Math.max(warmest, clo);
            }
        }
    }
}
