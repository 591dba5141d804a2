package campcloth.event;

import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The spells presumed where only the season of an event is known. */
public final class Seasons {

    private static final String FILE = "seasons.csv";

    private static final List<String> COLUMNS = List.of(
            "season",
            "name",
            "hours",
            "airC",
            "humidityPercent",
            "windMs",
            "sun",
            "activity",
            "fireRole",
            "fireDistanceM",
            "source");

    private final Map<Season, List<Spell>> spells;

    private Seasons(Map<Season, List<Spell>> spells) {
        this.spells = spells;
    }

    /** Reads the table of defaults; what is wrong in it goes to the faults given. */
    public static Seasons read(Reader text, List<Fault> faults) throws IOException {
        Map<Season, List<Spell>> spells = new EnumMap<>(Season.class);
        ReferenceTable.read(FILE, text, COLUMNS, faults).map(row -> {
            Spell spell = spell(row);
            spells.computeIfAbsent(row.word("season", Season.class), s -> new ArrayList<>())
                    .add(spell);
            return spell;
        });
        for (Season season : Season.values()) {
            if (!spells.containsKey(season)) {
                faults.add(new Fault(FILE, 1, "season", "has no spell for " + season, "add at least one row"));
            }
        }
        return new Seasons(spells);
    }

    /** The spells presumed for a season: a stated default, not a forecast. */
    public List<Spell> spells(Season season) {
        return List.copyOf(spells.getOrDefault(season, List.of()));
    }

    private static Spell spell(ReferenceTable.Row row) {
        return new Spell(
                row.text("name"),
                row.number("hours"),
                row.number("airC"),
                row.number("humidityPercent"),
                row.number("windMs"),
                row.word("sun", Sun.class),
                row.word("activity", Activity.class),
                row.optionalText("fireRole")
                        .map(role -> new OpenFire(
                                row.word("fireRole", FireRole.class),
                                row.optionalNumber("fireDistanceM"),
                                Optional.empty())));
    }
}
