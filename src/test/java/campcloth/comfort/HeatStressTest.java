package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Activity;
import campcloth.event.Place;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.event.Sun;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HeatStressTest {

    @Test
    void hardWorkInHotSunIsCautionedAgainstWithItsHoursAndPauses() {
        Spell noon = spell("noon", 4, 33, Sun.FULL, Activity.FIGHTING);
        Spell evening = spell("evening", 3, 18, Sun.NONE, Activity.SEATED);
        assertThat(caution(noon, evening))
                .hasValueSatisfying(text -> assertThat(text)
                        .startsWith("Heat stress for 4 h, worst in \"noon\"")
                        .contains(
                                "above 22.9 for that work and people not used to heat and above 26.5 for people who are")
                        .contains("Put that work off to cooler hours")
                        .endsWith("What the event's first aiders say goes first."));
    }

    @Test
    void betweenBothReferencesItIsForPeopleNotUsedToHeatAlone() {
        assertThat(caution(spell("noon", 2, 27, Sun.FULL, Activity.WALKING)))
                .hasValueSatisfying(text -> assertThat(text)
                        .contains(", below 28.7 for people who are.")
                        .contains("At most about 40 minutes of it in an hour"));
    }

    @Test
    void mildAirRestAndSleepNeedNone() {
        assertThat(caution(
                        spell("morning", 3, 16, Sun.FULL, Activity.WALKING),
                        spell("noon", 3, 27, Sun.NONE, Activity.SEATED),
                        spell("night", 8, 40, Sun.NONE, Activity.SLEEPING)))
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

    @Test
    void theSunIsThatOfPlaceHourAndCloudWhereTheyAreTold() {
        Spell day = spell("day", 24, 27, Sun.FULL, Activity.WALKING);
        double presumed = caughtHours(caution(day));
        assertThat(presumed).isEqualTo(24);
        Optional<Place> summer = Optional.of(new Place(50, 172));
        Spell clear = day.withSky(sky(0));
        double hours = caughtHours(HeatStress.caution(List.of(clear), summer));
        assertThat(hours).isBetween(6.0, 14.0);
        assertThat(HeatStress.caution(List.of(day.withSky(sky(100))), summer)
                        .map(caught -> caughtHours(Optional.of(caught)))
                        .orElse(0.0))
                .isLessThan(hours);
        assertThat(HeatStress.caution(List.of(clear), Optional.of(new Place(70, 355))))
                .isEmpty();
    }

    private static Sky sky(double cloudPercent) {
        return new Sky(Optional.of(LocalTime.MIDNIGHT), Optional.of(cloudPercent), Optional.empty());
    }

    private static double caughtHours(Optional<String> caution) {
        return Double.parseDouble(caution.orElseThrow().split(" ")[3]);
    }

    private static Optional<String> caution(Spell... spells) {
        return HeatStress.caution(List.of(spells), Optional.empty());
    }

    private static double wbgt(Sun sun) {
        return HeatStress.wbgtC(spell("noon", 1, 28, sun, Activity.WALKING), Optional.empty(), 0.5)
                .orElseThrow();
    }

    private static Spell spell(String name, double hours, double airC, Sun sun, Activity activity) {
        return new Spell(name, hours, airC, 50, 1.5, sun, activity, Optional.empty());
    }
}
