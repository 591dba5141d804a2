package campcloth.browser;

import campcloth.event.Event;
import campcloth.event.EventDates;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Provenance;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Seasons;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Invented camps with a fire to sit at and rules of two authorities. */
final class Camps {

    private Camps() {}

    static Event named(String name, Seasons seasons) {
        OpenFire fire =
                new OpenFire(FireRole.SEATED, Optional.of(2.0), Optional.empty(), Optional.of(FireKind.CAMPFIRE));
        return new Event(
                name,
                Season.SUMMER,
                seasons.spells(Season.SUMMER).stream()
                        .map(s -> s.fire().isPresent() ? s.withFire(fire) : s)
                        .toList(),
                List.of(
                        rule("No acrylic at the fires."),
                        new SafetyRule(
                                Authority.VENUE,
                                "A third of what melts, no more.",
                                Optional.of(33.0),
                                Set.of(),
                                Optional.empty(),
                                false,
                                Optional.of(3.0))),
                false,
                Optional.of(new EventDates(LocalDate.of(2027, 7, 16), LocalDate.of(2027, 7, 18))),
                Optional.empty());
    }

    /** A rule of the event against acrylic, in those words, with where it stands. */
    static SafetyRule rule(String words) {
        SafetyRule plain = new SafetyRule(
                Authority.EVENT, words, Optional.empty(), Set.of("acrylic"), Optional.empty(), false, Optional.of(5.0));
        return new SafetyRule(
                plain.authority(),
                plain.statement(),
                plain.conditions(),
                plain.reach(),
                new Provenance(
                        Optional.of("Wendlow rules, page 2"),
                        Optional.empty(),
                        Optional.of("3"),
                        Optional.empty(),
                        Optional.empty()));
    }
}
