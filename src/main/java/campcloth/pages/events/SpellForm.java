package campcloth.pages.events;

import campcloth.event.Activity;
import campcloth.event.Beaufort;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Shelter;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.event.Wetness;
import campcloth.figure.DayText;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One spell as it is typed. A spell that is gone keeps its number until all numbers typed can be read. */
public final class SpellForm {

    public boolean gone;
    public @Nullable String name;
    public @Nullable Double hours;
    public @Nullable Double airC;
    public @Nullable Double humidityPercent;
    public @Nullable Double windMs;
    public @Nullable Sun sun;
    public @Nullable Activity activity;
    public @Nullable String startsAt;
    public @Nullable Double cloudPercent;
    public @Nullable Shelter shelter;
    public @Nullable Wetness wet;
    public @Nullable FireRole fireRole;

    @TypedIn(Units.Measure.DISTANCE_M)
    public @Nullable Double fireDistanceM;

    public @Nullable FireKind fireKind;
    public @Nullable Double fireKw;

    static SpellForm of(Spell spell) {
        SpellForm form = new SpellForm();
        form.name = spell.name();
        form.hours = spell.hours();
        form.airC = spell.airC();
        form.humidityPercent = spell.humidityPercent();
        form.windMs = spell.windMs();
        form.sun = spell.sun();
        form.activity = spell.activity();
        form.startsAt = spell.skyTold().startsAt().map(LocalTime::toString).orElse(null);
        form.cloudPercent = spell.skyTold().cloudPercent().orElse(null);
        form.shelter = spell.skyTold().shelter().orElse(null);
        form.wet = spell.wet().orElse(null);
        spell.fire().ifPresent(form::take);
        return form;
    }

    /** A further spell: the weather of the one before, without a name and without a fire. */
    static SpellForm after(SpellForm before) {
        SpellForm form = new SpellForm();
        form.hours = before.hours;
        form.airC = before.airC;
        form.humidityPercent = before.humidityPercent;
        form.windMs = before.windMs;
        form.sun = before.sun;
        form.activity = before.activity;
        form.cloudPercent = before.cloudPercent;
        return form;
    }

    private void take(OpenFire fire) {
        fireRole = fire.role();
        fireDistanceM = fire.distanceM().orElse(null);
        fireKind = fire.kind().orElse(null);
        fireKw = fire.fireKw().orElse(null);
    }

    /** The wind on the Beaufort scale; empty where none is typed. */
    public Optional<Beaufort> beaufort() {
        return Optional.ofNullable(windMs).map(Beaufort::of);
    }

    Spell spell(boolean placed) {
        List<Refusal> missing = new ArrayList<>();
        needed("hours", hours, missing);
        needed("airC", airC, missing);
        needed("humidityPercent", humidityPercent, missing);
        needed("windMs", windMs, missing);
        needed("activity", activity, missing);
        if (!missing.isEmpty()) {
            throw new Refused(missing);
        }
        Sky sky = new Sky(
                DayText.solarTime("startsAt", Optional.ofNullable(startsAt)),
                Optional.ofNullable(cloudPercent),
                Optional.ofNullable(shelter));
        return new Spell(
                name == null ? "" : name,
                Objects.requireNonNull(hours),
                Objects.requireNonNull(airC),
                Objects.requireNonNull(humidityPercent),
                Objects.requireNonNull(windMs),
                sun == null ? sky.sunUntold(placed) : sun,
                Objects.requireNonNull(activity),
                fire(),
                sky.told(),
                Optional.ofNullable(wet));
    }

    private Optional<OpenFire> fire() {
        if (fireRole != null) {
            return Optional.of(new OpenFire(
                    fireRole,
                    Optional.ofNullable(fireDistanceM),
                    Optional.ofNullable(fireKw),
                    Optional.ofNullable(fireKind)));
        }
        if (fireDistanceM != null || fireKw != null || fireKind != null) {
            throw Refused.of(
                    "fireRole", "is missing beside a fire", "say what the wearer does there, or empty the fire");
        }
        return Optional.empty();
    }

    private static void needed(String field, @Nullable Object value, List<Refusal> missing) {
        if (value == null) {
            missing.add(new Refusal(field, "is missing", "fill it in; the usual spells of the season are a start"));
        }
    }
}
