package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Activity;
import campcloth.event.Spell;
import campcloth.event.Sun;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HeatStressTest {

    @Test
    void hardWorkInHotSunIsCautionedAgainstWithItsHoursAndPauses() {
        Spell noon = spell("noon", 4, 33, Sun.FULL, Activity.FIGHTING);
        Spell evening = spell("evening", 3, 18, Sun.NONE, Activity.SEATED);
        assertThat(HeatStress.caution(List.of(noon, evening)))
                .hasValueSatisfying(text -> assertThat(text)
                        .startsWith("Heat stress for 4 h, worst in \"noon\"")
                        .contains(
                                "above 22.9 for that work and people not used to heat and above 26.5 for people who are")
                        .contains("Put that work off to cooler hours")
                        .endsWith("What the event's first aiders say goes first."));
    }

    @Test
    void betweenBothReferencesItIsForPeopleNotUsedToHeatAlone() {
        assertThat(HeatStress.caution(List.of(spell("noon", 2, 27, Sun.FULL, Activity.WALKING))))
                .hasValueSatisfying(text -> assertThat(text)
                        .contains(", below 28.7 for people who are.")
                        .contains("At most about 40 minutes of it in an hour"));
    }

    @Test
    void mildAirRestAndSleepNeedNone() {
        assertThat(HeatStress.caution(List.of(
                        spell("morning", 3, 16, Sun.FULL, Activity.WALKING),
                        spell("noon", 3, 27, Sun.NONE, Activity.SEATED),
                        spell("night", 8, 40, Sun.NONE, Activity.SLEEPING))))
                .isEmpty();
    }

    @Test
    void theSunRaisesItAndThePartOfItByHalf() {
        double shade = wbgt(Sun.NONE);
        double part = wbgt(Sun.PART);
        double full = wbgt(Sun.FULL);
        assertThat(full).isGreaterThan(shade + 2);
        assertThat(part).isEqualTo((shade + full) / 2);
    }

    private static double wbgt(Sun sun) {
        return HeatStress.wbgtC(spell("noon", 1, 28, sun, Activity.WALKING)).orElseThrow();
    }

    private static Spell spell(String name, double hours, double airC, Sun sun, Activity activity) {
        return new Spell(name, hours, airC, 50, 1.5, sun, activity, Optional.empty());
    }
}
