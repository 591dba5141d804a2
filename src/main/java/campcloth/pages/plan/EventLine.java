package campcloth.pages.plan;

import campcloth.errand.TakenEvent;
import campcloth.event.Event;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.fibre.Fibres;
import campcloth.fire.MissingRules;
import campcloth.fire.RuleConflict;
import campcloth.fire.RuleConflicts;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An event in short, as a page tells it.
 *
 * @param name as its owner wrote it, may be empty
 * @param version of the event on file; null where it was told
 * @param spells its spells
 * @param fires those of its spells in which the wearer is at a fire
 * @param rules its rules
 * @param noRules for each authority without a rule, what that means
 * @param conflicts where rules differ
 */
public record EventLine(
        String name,
        Season season,
        double leastC,
        double mostC,
        @Nullable String id,
        @Nullable Long version,
        List<Spell> spells,
        List<FireLine> fires,
        List<SafetyRule> rules,
        List<MissingRule> noRules,
        List<String> conflicts) {

    /** A fire and the wearer's place at it; null where nobody said. */
    public record FireLine(
            String spell,
            String role,
            @Nullable Double distanceM,
            @Nullable String kind,
            @Nullable Double fireKw) {

        private static FireLine of(Spell spell, OpenFire fire) {
            return new FireLine(
                    spell.name(),
                    fire.role().name(),
                    fire.distanceM().orElse(null),
                    fire.kind().map(Enum::name).orElse(null),
                    fire.fireKw().orElse(null));
        }
    }

    /** An authority without a rule on file. */
    public record MissingRule(String authority, String sentence) {}

    static EventLine of(TakenEvent taken, Fibres fibres) {
        Event event = taken.event();
        return new EventLine(
                event.name(),
                event.season(),
                event.spells().stream().mapToDouble(Spell::airC).min().orElseThrow(),
                event.spells().stream().mapToDouble(Spell::airC).max().orElseThrow(),
                taken.onFile().map(TakenEvent.OnFile::id).orElse(null),
                taken.onFile().map(TakenEvent.OnFile::version).orElse(null),
                event.spells(),
                event.spells().stream()
                        .flatMap(spell -> spell.fireInUse().map(fire -> FireLine.of(spell, fire)).stream())
                        .toList(),
                event.rules(),
                MissingRules.of(event.rules()).stream()
                        .map(authority -> new MissingRule(authority.name(), MissingRules.sentence(authority)))
                        .toList(),
                RuleConflicts.of(event.rules(), fibres).stream()
                        .map(RuleConflict::text)
                        .toList());
    }
}
