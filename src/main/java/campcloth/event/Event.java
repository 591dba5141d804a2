package campcloth.event;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.List;
import java.util.Optional;

/**
 * An event: when it is, what happens there, which rules hold.
 *
 * @param name what people call it, at most 200 characters, may be empty
 * @param season its season
 * @param spells its spells of weather and activity, 1 to 24
 * @param rules the rules on file, may be none: that is not permission
 * @param spellsPresumed whether nobody gave the spells: they are those usual for the season
 * @param latitudeDeg its latitude, north positive, where somebody said
 */
public record Event(
        String name,
        Season season,
        List<Spell> spells,
        List<SafetyRule> rules,
        boolean spellsPresumed,
        Optional<Double> latitudeDeg) {

    public static final int MOST_SPELLS = 24;
    public static final int MOST_RULES = 100;
    private static final int LONGEST_NAME = 200;
    private static final Range LATITUDE = new Range("latitudeDeg", -90, 90, "degrees");

    public Event {
        if (name.length() > LONGEST_NAME) {
            throw Refused.of("name", "has " + name.length() + " characters", "keep it to 200 characters");
        }
        if (spells.isEmpty() || spells.size() > MOST_SPELLS) {
            throw Refused.of("spells", "there are " + spells.size(), "give 1 to 24 spells");
        }
        if (rules.size() > MOST_RULES) {
            throw Refused.of("rules", "there are " + rules.size(), "give at most 100 rules");
        }
        latitudeDeg.ifPresent(LATITUDE::check);
        spells = List.copyOf(spells);
        rules = List.copyOf(rules);
    }

    /** An event whose spells somebody gave. */
    public Event(String name, Season season, List<Spell> spells, List<SafetyRule> rules) {
        this(name, season, spells, rules, false);
    }

    /** An event of whose place nothing was said. */
    public Event(String name, Season season, List<Spell> spells, List<SafetyRule> rules, boolean spellsPresumed) {
        this(name, season, spells, rules, spellsPresumed, Optional.empty());
    }

    /** Where and when the sun is to be reckoned for: the middle day of the season; empty without a latitude. */
    public Optional<Place> place() {
        return latitudeDeg.map(latitude -> new Place(latitude, season.middleDay(latitude < 0)));
    }
}
