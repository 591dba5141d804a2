package campcloth.event;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An event: when it is, what happens there, which rules hold.
 *
 * @param name what people call it, at most 200 characters, may be empty
 * @param season its season
 * @param spells its spells of weather and activity, 1 to 24
 * @param rules the rules on file, may be none: that is not permission
 * @param spellsPresumed whether nobody gave the spells: they are those usual for the season
 * @param dates its days; empty where nobody said
 * @param latitudeDeg its latitude, north positive, where somebody said
 */
public record Event(
        String name,
        Season season,
        List<Spell> spells,
        List<SafetyRule> rules,
        boolean spellsPresumed,
        Optional<EventDates> dates,

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

    /** An event at an untold time. */
    public Event(String name, Season season, List<Spell> spells, List<SafetyRule> rules, boolean spellsPresumed) {
        this(name, season, spells, rules, spellsPresumed, Optional.empty(), Optional.empty());
    }

    /** An event whose spells somebody gave, at an untold time. */
    public Event(String name, Season season, List<Spell> spells, List<SafetyRule> rules) {
        this(name, season, spells, rules, false);
    }

    /** The same event with other spells, as many as before. */
    public Event withSpells(List<Spell> others) {
        return new Event(name, season, others, rules, spellsPresumed, dates, latitudeDeg);
    }

    /** The same event under other rules. */
    public Event withRules(List<SafetyRule> others) {
        return new Event(name, season, spells, others, spellsPresumed, dates, latitudeDeg);
    }

    /** The same event at a latitude, north positive. */
    public Event at(double latitude) {
        return new Event(name, season, spells, rules, spellsPresumed, dates, Optional.of(latitude));
    }

    /** By name, what stands otherwise in another event, but for its rules. */
    public List<String> differencesBesidesRules(Event other) {
        return Stream.of(
                        Stream.of("name").filter(field -> !name.equals(other.name)),
                        Stream.of("season").filter(field -> season != other.season),
                        Stream.of("spells")
                                .filter(field ->
                                        !spells.equals(other.spells) || spellsPresumed != other.spellsPresumed),
                        Stream.of("dates").filter(field -> !dates.equals(other.dates)),
                        Stream.of("latitudeDeg").filter(field -> !latitudeDeg.equals(other.latitudeDeg)))
                .flatMap(named -> named)
                .toList();
    }

    /** Where and when the sun is to be reckoned for: its first day, or the middle day of the season; empty without a latitude. */
    public Optional<Place> place() {
        return latitudeDeg.map(latitude -> new Place(
                latitude,
                dates.map(days -> days.startsOn().getDayOfYear()).orElseGet(() -> season.middleDay(latitude < 0))));
    }
}
