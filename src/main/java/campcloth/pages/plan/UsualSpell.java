package campcloth.pages.plan;

import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Spell;
import campcloth.figure.Words;

/** What is usual for a spell of a season, as the form shows it beside each field. */
public record UsualSpell(
        String airC,
        String humidityPercent,
        String windMs,
        String sun,
        String activity,
        String fireRole,
        String hours) {

    static UsualSpell of(Spell spell) {
        return new UsualSpell(
                Words.number(spell.airC()),
                Words.number(spell.humidityPercent()),
                Words.number(spell.windMs()),
                spell.sun().name(),
                spell.activity().name(),
                spell.fire().map(OpenFire::role).orElse(FireRole.NONE).name(),
                Words.number(spell.hours()));
    }
}
