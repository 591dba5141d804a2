package campcloth.pages.plan;

import campcloth.event.Activity;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.figure.Refused;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One spell of a simple day. What is left empty is as usual for the season. */
public final class SpellForm {

    public @Nullable Double hours;
    public @Nullable Double airC;
    public @Nullable Double humidityPercent;
    public @Nullable Double windMs;
    public @Nullable Sun sun;
    public @Nullable Activity activity;

    /** {@code NONE} says that there is no fire. */
    public @Nullable FireRole fireRole;

    @TypedIn(Units.Measure.DISTANCE_M)
    public @Nullable Double fireDistanceM;

    public @Nullable FireKind fireKind;

    boolean isEmpty() {
        return hours == null
                && airC == null
                && humidityPercent == null
                && windMs == null
                && sun == null
                && activity == null
                && fireRole == null
                && fireDistanceM == null
                && fireKind == null;
    }

    /** The spell, with the usual one for what was left empty. */
    Spell over(Spell usual) {
        return new Spell(
                usual.name(),
                or(hours, usual.hours()),
                or(airC, usual.airC()),
                or(humidityPercent, usual.humidityPercent()),
                or(windMs, usual.windMs()),
                or(sun, usual.sun()),
                or(activity, usual.activity()),
                fire(usual.fire()));
    }

    /** A distance or a kind without a role is of the fire that is usual, or of one that is passed by. */
    private Optional<OpenFire> fire(Optional<OpenFire> usual) {
        if (fireRole == FireRole.NONE) {
            return Optional.empty();
        }
        if (fireRole == null && fireDistanceM == null && fireKind == null) {
            return usual;
        }
        boolean same = fireRole == null
                || usual.filter(fire -> fire.role() == fireRole).isPresent();
        Optional<Double> distance = Optional.ofNullable(fireDistanceM)
                .or(() -> same ? usual.flatMap(OpenFire::distanceM) : Optional.empty());
        FireRole role = or(fireRole, usual.map(OpenFire::role).orElse(FireRole.PASSING));
        return Optional.of(Refused.within(
                "fire", () -> new OpenFire(role, distance, Optional.empty(), Optional.ofNullable(fireKind))));
    }

    void write(String spell, QueryText query) {
        query.add(spell + ".hours", hours);
        query.add(spell + ".airC", airC);
        query.add(spell + ".humidityPercent", humidityPercent);
        query.add(spell + ".windMs", windMs);
        query.add(spell + ".sun", sun);
        query.add(spell + ".activity", activity);
        query.add(spell + ".fireRole", fireRole);
        query.add(spell + ".fireDistanceM", fireDistanceM);
        query.add(spell + ".fireKind", fireKind);
    }

    private static <T> T or(@Nullable T told, T usual) {
        return told == null ? usual : told;
    }
}
