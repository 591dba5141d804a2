package campcloth.pages.events;

import campcloth.event.Event;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.event.Spell;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * Where an event that is kept differs from what somebody typed.
 *
 * @param about what differs, the last part of its text's key
 * @param kept as it is kept; empty where it is not there
 * @param typed as it was typed; empty where it is not there
 */
record Differences(String about, String kept, String typed) {

    static List<Differences> between(Event kept, Event typed) {
        List<Differences> found = new ArrayList<>();
        add(found, "name", kept.name(), typed.name());
        add(found, "season", kept.season().name(), typed.season().name());
        add(found, "dates", dates(kept), dates(typed));
        add(found, "latitude", latitude(kept), latitude(typed));
        lists(found, "spell", kept.spells(), typed.spells(), Differences::words);
        lists(found, "rule", kept.rules(), typed.rules(), SafetyRule::statement);
        return found;
    }

    private static void add(List<Differences> found, String about, String kept, String typed) {
        if (!Objects.equals(kept, typed)) {
            found.add(new Differences(about, kept, typed));
        }
    }

    /** What is only in one of the lists, in pairs as they come. */
    private static <T> void lists(
            List<Differences> found, String about, List<T> kept, List<T> typed, Function<T, String> words) {
        List<String> onlyKept =
                kept.stream().filter(one -> !typed.contains(one)).map(words).toList();
        List<String> onlyTyped =
                typed.stream().filter(one -> !kept.contains(one)).map(words).toList();
        for (int i = 0; i < Math.max(onlyKept.size(), onlyTyped.size()); i++) {
            found.add(new Differences(
                    about, i < onlyKept.size() ? onlyKept.get(i) : "", i < onlyTyped.size() ? onlyTyped.get(i) : ""));
        }
    }

    private static String words(Spell spell) {
        return spell.name() + ": " + Words.number(spell.hours()) + " h, " + Words.number(spell.airC()) + " °C, "
                + Words.number(spell.humidityPercent()) + " %, " + Words.number(spell.windMs()) + " m/s, " + spell.sun()
                + ", " + spell.activity() + spell.fire().map(Differences::words).orElse("");
    }

    private static String words(OpenFire fire) {
        return ", fire: " + fire.role()
                + fire.distanceM().map(m -> " " + Words.number(m) + " m").orElse("");
    }

    private static String dates(Event event) {
        return event.dates()
                .map(days -> days.startsOn() + " - " + days.endsOn())
                .orElse("");
    }

    private static String latitude(Event event) {
        return event.latitudeDeg().map(Words::number).orElse("");
    }
}
