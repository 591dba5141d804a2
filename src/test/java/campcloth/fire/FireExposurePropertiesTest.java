package campcloth.fire;

import static campcloth.fire.Draw.always;
import static campcloth.fire.Draw.claim;
import static campcloth.fire.Grades.neverLower;

import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.event.Sun;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What holds in every exposure: property 2 of the grading. */
class FireExposurePropertiesTest {

    private static final FireAdvice ADVICE = new FireAdvice(new FireRules(FireFixtures.FIBRES));

    @Test
    @DisplayName("2 Closer to the fire never lowers the hazard")
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

    @Test
    @DisplayName("2 Longer at the fire never lowers it: how long a spell lasts makes no difference at all")
    void longerAtTheFireMakesNoDifference() {
        always(212, draw -> {
            WornCloth cloth = draw.cloth();
            OpenFire fire = draw.fire();
            double hours = draw.between(0.1, 24);
            FireJudgement shorter = ADVICE.judge(cloth, lasting(draw.between(0.1, hours), fire));
            claim(shorter.equals(ADVICE.judge(cloth, lasting(hours, fire))), cloth, fire, hours);
        });
    }

    /** From where people sit at the nearest; beyond 300 kW nobody stays there, and that is never presumed. */
    @Test
    @DisplayName("2 A distance that nobody told is never graded lower than one that is told")
    void aDistanceThatNobodyToldIsNeverGradedLowerThanOneThatIsTold() {
        always(1414, draw -> {
            FireRole role = draw.roleAtFire();
            Optional<Double> fireKw = Optional.of(draw.between(5, 300));
            Exposure told = new Exposure(role, Optional.of(draw.between(1.5, 20)), fireKw);
            neverLower(draw.cloth(), told, new Exposure(role, Optional.empty(), fireKw));
        });
    }

    @Test
    @DisplayName("2 A larger fire never lowers it")
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
    @DisplayName("2 A riskier role never lowers it")
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
    @DisplayName("Without a place at a fire there is no hazard and no warning")
    void withoutAPlaceAtAFireThereIsNoHazardAndNoWarning() {
        always(1111, draw -> {
            Exposure away = new Exposure(FireRole.NONE, draw.perhapsDistanceM(), draw.perhapsFireKw());
            FireHazard hazard = FireGrading.grade(draw.cloth(), away);
            claim(hazard.hazard() == 0 && hazard.grade() == FireGrade.LOW, hazard);
            claim(hazard.meltWarning() == MeltWarning.NONE && hazard.fluxKwM2().isEmpty(), hazard);
        });
    }

    private static Event lasting(double hours, OpenFire fire) {
        Spell spell = new Spell("fireside", hours, 12, 75, 1, Sun.NONE, Activity.SEATED, Optional.of(fire));
        return new Event("Wendlow river camp", Season.SUMMER, List.of(spell), List.of());
    }
}
