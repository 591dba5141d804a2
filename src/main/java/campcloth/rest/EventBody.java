package campcloth.rest;

import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.EventDates;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.KeptEvent;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.event.Shelter;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.event.Wetness;
import campcloth.fibre.Fibres;
import campcloth.figure.DayText;
import campcloth.figure.Refused;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/** An event as it is sent and served. */
@Schema(
        name = "Event",
        description = "An event. With the season alone, a stated default for that season stands in for the spells.")
record EventBody(
        @Schema(accessMode = Schema.AccessMode.READ_ONLY) @Nullable
        String id,

        @Schema(example = "Wendlow river camp") @Nullable @Size(max = 200)
        String name,

        @NotNull Season season,

        @Nullable @Size(max = Event.MOST_SPELLS, message = "give at most 24 spells")
        List<@NotNull @Valid SpellBody> spells,

        @Nullable @Size(max = Event.MOST_RULES, message = "give at most 100 rules")
        List<@NotNull @Valid RuleBody> rules,

        @Schema(description = "whether the spells are those usual for the season because nobody gave them") @Nullable
        Boolean spellsPresumed,

        @Schema(example = "2027-07-16", format = "date", description = "its first day") @Nullable
        String startsOn,

        @Schema(
                example = "2027-07-18",
                format = "date",
                description = "its last day; the first one where it is left out")
        @Nullable
        String endsOn,

        @Schema(example = "51.5", description = "north positive; with a spell's startsAt the sun follows from it")
        @Nullable
        Double latitudeDeg) {

    /** A spell of weather and activity. */
    @Schema(name = "Spell")
    record SpellBody(
            @Schema(example = "noon") @Nullable @Size(max = 100)
            String name,

            @Schema(example = "5") @NotNull Double hours,
            @Schema(example = "27") @NotNull Double airC,
            @Schema(example = "50") @NotNull Double humidityPercent,

            @Schema(example = "1.5", description = "as forecast, at 10 m height") @NotNull
            Double windMs,

            @Schema(description = "NONE where it is left out; FULL where latitudeDeg and startsAt are told") @Nullable
            Sun sun,

            @NotNull Activity activity,
            @Nullable @Valid FireBody fire,

            @Schema(example = "13:30", description = "local solar time: the sun is highest at 12:00")
            @Nullable
            @Size(max = 8)
            String startsAt,

            @Schema(
                    example = "25",
                    description =
                            "share of the sky that clouds cover; the sky is as warm as the air where it is left out")
            @Nullable
            Double cloudPercent,

            @Schema(description = "OPEN where it is left out; no cold sky under trees or a tent") @Nullable
            Shelter shelter,

            @Schema(description = "how wet the clothes are; counted as dry where it is left out") @Nullable
            Wetness wet) {

        static SpellBody of(Spell spell) {
            return new SpellBody(
                    spell.name(),
                    spell.hours(),
                    spell.airC(),
                    spell.humidityPercent(),
                    spell.windMs(),
                    spell.sun(),
                    spell.activity(),
                    spell.fire().map(FireBody::of).orElse(null),
                    spell.skyTold().startsAt().map(LocalTime::toString).orElse(null),
                    spell.skyTold().cloudPercent().orElse(null),
                    spell.skyTold().shelter().orElse(null),
                    spell.wet().orElse(null));
        }

        private Sky sky() {
            return new Sky(
                    DayText.solarTime("startsAt", Optional.ofNullable(startsAt)),
                    Optional.ofNullable(cloudPercent),
                    Optional.ofNullable(shelter));
        }

        Spell spell(int number, boolean placed) {
            Sky sky = sky();
            return new Spell(
                    name == null || name.isBlank() ? "spell " + (number + 1) : name,
                    hours,
                    airC,
                    humidityPercent,
                    windMs,
                    sun == null ? sky.sunUntold(placed) : sun,
                    activity,
                    fire == null ? Optional.empty() : Optional.of(Refused.within("fire", fire::fire)),
                    sky.told(),
                    Optional.ofNullable(wet));
        }
    }

    /** An open fire and the wearer's place at it. */
    @Schema(name = "OpenFire")
    record FireBody(
            @NotNull FireRole role,

            @Schema(example = "2.0", description = "from the fire's centre") @Nullable
            Double distanceM,

            @Schema(example = "100", description = "heat release") @Nullable
            Double fireKw,

            @Schema(
                    description =
                            "what people call it: counted as 20, 50, 100 or 500 kW; where fireKw is given too, that"
                                    + " counts and the kind only names the fire")
            @Nullable
            FireKind kind) {

        static FireBody of(OpenFire fire) {
            return new FireBody(
                    fire.role(),
                    fire.distanceM().orElse(null),
                    fire.fireKw().orElse(null),
                    fire.kind().orElse(null));
        }

        OpenFire fire() {
            return new OpenFire(
                    role, Optional.ofNullable(distanceM), Optional.ofNullable(fireKw), Optional.ofNullable(kind));
        }
    }

    static EventBody of(KeptEvent kept) {
        return of(kept.id(), kept.event());
    }

    static EventBody of(@Nullable String id, Event event) {
        return new EventBody(
                id,
                event.name(),
                event.season(),
                event.spells().stream().map(SpellBody::of).toList(),
                event.rules().stream().map(RuleBody::of).toList(),
                event.spellsPresumed(),
                event.dates().map(days -> days.startsOn().toString()).orElse(null),
                event.dates().map(days -> days.endsOn().toString()).orElse(null),
                event.latitudeDeg().orElse(null));
    }

    /** Refuses a body that carries the id of another event than the address. */
    void isNamed(String address) {
        if (id != null && !id.equals(address)) {
            throw Refused.of("id", "is not the id in the address", "leave it out, or send to its own address");
        }
    }

    Event event(Seasons seasons, Fibres fibres) {
        List<SpellBody> given = spells == null ? List.of() : spells;
        List<Spell> known = given.isEmpty()
                ? seasons.spells(season)
                : each("spells", given.size(), i -> given.get(i).spell(i, latitudeDeg != null));
        List<SafetyRule> onFile = RuleBody.rules(rules, fibres);
        boolean presumed = given.isEmpty() || Boolean.TRUE.equals(spellsPresumed);
        return new Event(
                name == null ? "" : name, season, known, onFile, presumed, dates(), Optional.ofNullable(latitudeDeg));
    }

    private Optional<EventDates> dates() {
        return EventDates.told(
                DayText.day("startsOn", Optional.ofNullable(startsOn)),
                DayText.day("endsOn", Optional.ofNullable(endsOn)));
    }

    static <T> List<T> each(String field, int count, IntFunction<T> part) {
        List<T> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int number = i;
            parts.add(Refused.within(field + "[" + i + "]", () -> part.apply(number)));
        }
        return parts;
    }
}
