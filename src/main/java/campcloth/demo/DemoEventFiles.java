package campcloth.demo;

import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.EventDates;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Provenance;
import campcloth.event.RuleConditions;
import campcloth.event.RuleReach;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Shelter;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.event.Wetness;
import campcloth.fibre.Fibres;
import campcloth.figure.DayText;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.ReferenceTable.Row;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reads the event of the demo. */
final class DemoEventFiles {

    private static final String EVENT = "demo/event.csv";
    private static final String SPELLS = "demo/spells.csv";
    private static final String RULES = "demo/rules.csv";

    private static final List<String> EVENT_COLUMNS = List.of("name", "season", "startsOn", "endsOn", "latitudeDeg");
    private static final List<String> SPELL_COLUMNS = List.of(
            "name",
            "hours",
            "airC",
            "humidityPercent",
            "windMs",
            "sun",
            "activity",
            "fireRole",
            "fireDistanceM",
            "fireKind",
            "startsAt",
            "cloudPercent",
            "shelter",
            "wet");
    private static final List<String> RULE_COLUMNS = List.of(
            "authority",
            "statement",
            "maxMeltablePercent",
            "forbiddenFibres",
            "keepAtLeastM",
            "withinM",
            "roles",
            "askAbout",
            "standsIn",
            "edition",
            "issuedOn");

    private DemoEventFiles() {}

    static Optional<Event> read(Map<String, Reader> files, Fibres fibres, List<Fault> faults) throws IOException {
        List<Spell> spells = ReferenceTable.read(SPELLS, DemoFiles.open(files, SPELLS, faults), SPELL_COLUMNS, faults)
                .map(DemoEventFiles::spell);
        List<SafetyRule> rules = ReferenceTable.read(RULES, DemoFiles.open(files, RULES, faults), RULE_COLUMNS, faults)
                .map(row -> rule(row, fibres));
        List<Event> events = ReferenceTable.read(EVENT, DemoFiles.open(files, EVENT, faults), EVENT_COLUMNS, faults)
                .map(row -> event(row, spells, rules));
        if (events.size() != 1) {
            faults.add(new Fault(EVENT, 1, "(whole file)", "has " + events.size() + " events", "keep one row"));
            return Optional.empty();
        }
        return Optional.of(events.get(0));
    }

    private static Event event(Row row, List<Spell> spells, List<SafetyRule> rules) {
        return new Event(
                row.text("name"),
                row.word("season", Season.class),
                spells,
                rules,
                false,
                EventDates.told(
                        DayText.day("startsOn", row.optionalText("startsOn")),
                        DayText.day("endsOn", row.optionalText("endsOn"))),
                row.optionalNumber("latitudeDeg"));
    }

    private static Spell spell(Row row) {
        Sky sky = new Sky(
                DayText.solarTime("startsAt", row.optionalText("startsAt")),
                row.optionalNumber("cloudPercent"),
                optional(row, "shelter", Shelter.class));
        return new Spell(
                row.text("name"),
                row.number("hours"),
                row.number("airC"),
                row.number("humidityPercent"),
                row.number("windMs"),
                row.word("sun", Sun.class),
                row.word("activity", Activity.class),
                optional(row, "fireRole", FireRole.class)
                        .map(role -> new OpenFire(
                                role,
                                row.optionalNumber("fireDistanceM"),
                                Optional.empty(),
                                optional(row, "fireKind", FireKind.class))),
                sky.told(),
                optional(row, "wet", Wetness.class));
    }

    private static SafetyRule rule(Row row, Fibres fibres) {
        Set<String> forbidden = new TreeSet<>();
        DemoFiles.list(row, "forbiddenFibres")
                .forEach(fibre ->
                        forbidden.add(fibres.require(fibre, "forbiddenFibres").key()));
        RuleConditions asked = new RuleConditions(
                row.optionalNumber("maxMeltablePercent"),
                forbidden,
                Set.of(),
                Optional.empty(),
                false,
                false,
                row.optionalNumber("keepAtLeastM"),
                Optional.empty(),
                Optional.empty(),
                row.optionalText("askAbout"));
        return new SafetyRule(
                row.word("authority", SafetyRule.Authority.class),
                row.text("statement"),
                asked,
                new RuleReach(row.optionalNumber("withinM"), roles(row)),
                new Provenance(
                        row.optionalText("standsIn"),
                        DayText.day("issuedOn", row.optionalText("issuedOn")),
                        row.optionalText("edition"),
                        Optional.empty(),
                        Optional.empty()));
    }

    private static Set<FireRole> roles(Row row) {
        Set<FireRole> roles = new TreeSet<>();
        for (String text : DemoFiles.list(row, "roles")) {
            roles.add(Arrays.stream(FireRole.values())
                    .filter(role -> role.name().equals(text))
                    .findFirst()
                    .orElseThrow(() -> Refused.of(
                            "roles", "'" + text + "' is not known", "write some of " + List.of(FireRole.values()))));
        }
        return roles;
    }

    private static <E extends Enum<E>> Optional<E> optional(Row row, String column, Class<E> words) {
        return row.optionalText(column).map(ignored -> row.word(column, words));
    }
}
