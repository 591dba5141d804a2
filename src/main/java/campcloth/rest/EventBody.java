package campcloth.rest;

import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.KeptEvent;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
        Boolean spellsPresumed) {

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

            @Schema(description = "NONE where it is left out") @Nullable
            Sun sun,

            @NotNull Activity activity,
            @Nullable @Valid FireBody fire) {

        static SpellBody of(Spell spell) {
            return new SpellBody(
                    spell.name(),
                    spell.hours(),
                    spell.airC(),
                    spell.humidityPercent(),
                    spell.windMs(),
                    spell.sun(),
                    spell.activity(),
                    spell.fire().map(FireBody::of).orElse(null));
        }

        Spell spell(int number) {
            return new Spell(
                    name == null || name.isBlank() ? "spell " + (number + 1) : name,
                    hours,
                    airC,
                    humidityPercent,
                    windMs,
                    sun == null ? Sun.NONE : sun,
                    activity,
                    fire == null ? Optional.empty() : Optional.of(Refused.within("fire", fire::fire)));
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

    /** A rule about clothing. What it leaves out does not restrict; with nothing to check it is only shown to ask about. */
    @Schema(name = "Rule")
    record RuleBody(
            @NotNull Authority authority,

            @Schema(example = "No more than a third synthetic within three metres of open fire")
            @NotNull
            @Size(min = 1, max = 1000)
            String statement,

            @Schema(example = "33") @Nullable Double maxMeltablePercent,
            @Nullable @Size(max = 60) List<@NotNull String> forbiddenFibres,
            @Nullable Double minWeightGsm,
            @Nullable Boolean plainSurfaceOnly,

            @Schema(example = "3.0", description = "distance from a fire within which it holds; everywhere if left out")
            @Nullable
            Double withinM) {

        static RuleBody of(SafetyRule rule) {
            return new RuleBody(
                    rule.authority(),
                    rule.statement(),
                    rule.maxMeltablePercent().orElse(null),
                    rule.forbiddenFibres().stream().sorted().toList(),
                    rule.minWeightGsm().orElse(null),
                    rule.plainSurfaceOnly(),
                    rule.withinM().orElse(null));
        }

        SafetyRule rule(Fibres fibres) {
            List<String> written = forbiddenFibres == null ? List.of() : forbiddenFibres;
            Set<String> forbidden = Set.copyOf(each(
                    "forbiddenFibres",
                    written.size(),
                    i -> fibres.require(written.get(i)).key()));
            return new SafetyRule(
                    authority,
                    statement,
                    Optional.ofNullable(maxMeltablePercent),
                    forbidden,
                    Optional.ofNullable(minWeightGsm),
                    plainSurfaceOnly != null && plainSurfaceOnly,
                    Optional.ofNullable(withinM));
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
                event.spellsPresumed());
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
                : each("spells", given.size(), i -> given.get(i).spell(i));
        List<SafetyRule> onFile = rules == null
                ? List.of()
                : each("rules", rules.size(), i -> rules.get(i).rule(fibres));
        boolean presumed = given.isEmpty() || Boolean.TRUE.equals(spellsPresumed);
        return new Event(name == null ? "" : name, season, known, onFile, presumed);
    }

    private static <T> List<T> each(String field, int count, IntFunction<T> part) {
        List<T> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int number = i;
            parts.add(Refused.within(field + "[" + i + "]", () -> part.apply(number)));
        }
        return parts;
    }
}
