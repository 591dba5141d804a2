package campcloth.pages.events;

import campcloth.event.Activity;
import campcloth.event.Beaufort;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Shelter;
import campcloth.event.Sun;
import campcloth.event.Wetness;
import java.util.Arrays;
import java.util.List;

/** What the lists of the form offer, in the order of the core; their words stand in the texts. */
record EventChoices(
        List<Season> seasons,
        List<Sun> suns,
        List<Activity> activities,
        List<Shelter> shelters,
        List<Wetness> wetnesses,
        List<FireRole> roles,
        List<FireRole> ruledRoles,
        List<FireKind> fireKinds,
        List<Authority> authorities,
        List<Beaufort> winds) {

    static EventChoices all() {
        return new EventChoices(
                List.of(Season.values()),
                List.of(Sun.values()),
                List.of(Activity.values()),
                List.of(Shelter.values()),
                List.of(Wetness.values()),
                List.of(FireRole.values()),
                Arrays.stream(FireRole.values())
                        .filter(role -> role != FireRole.NONE)
                        .toList(),
                List.of(FireKind.values()),
                List.of(Authority.values()),
                List.of(Beaufort.values()));
    }
}
