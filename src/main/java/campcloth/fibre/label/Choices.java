package campcloth.fibre.label;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads spots whose words may still mean several things. The language of the other words rules meanings out first. What is
 * left is read in every way, and stands only where all ways but one break the rules of labels, or all come to the same: a
 * choice between two fibres is never made, nor one that would pass over what might be a fibre.
 */
final class Choices {

    private static final int MOST_WAYS = 16;

    private final String text;
    private final Set<String> notes = new LinkedHashSet<>();
    private final List<Spot> spots;

    private Choices(String text, List<Spot> spots, Set<String> spoken) {
        this.text = text;
        this.spots = Evidence.weighed(spots, spoken, notes);
    }

    /**
     * @param spoken the languages of the text where they are known, else none
     * @throws Unreadable where there is no reading, or more than one
     */
    static Reading read(String text, List<Spot> spots, Set<String> spoken) {
        return new Choices(text, spots, spoken).read();
    }

    private Reading read() {
        Map<String, Spot> open = new LinkedHashMap<>();
        spots.stream().filter(Spot::isOpen).forEach(spot -> open.putIfAbsent(spot.text(), spot));
        if (open.isEmpty()) {
            return Compositions.read(text, spots, notes);
        }
        int ways = 1;
        for (Spot spot : open.values()) {
            ways *= spot.senses().size();
            if (ways > MOST_WAYS || mustNotBeTried(spot)) {
                throw manyReadings(spot);
            }
        }
        return tried(open, ways);
    }

    private Reading tried(Map<String, Spot> open, int ways) {
        List<Reading> readings = new ArrayList<>();
        List<Unreadable> broken = new ArrayList<>();
        for (int way = 0; way < ways; way++) {
            try {
                readings.add(Compositions.read(text, chosen(open, way), notes));
            } catch (Unreadable unreadable) {
                broken.add(unreadable);
            }
        }
        if (readings.isEmpty() && (sameFault(broken) || areWordsBesideCodes(open))) {
            throw broken.get(0);
        }
        if (readings.isEmpty() || !readings.stream().allMatch(readings.get(0)::agreesWith)) {
            throw manyReadings(open.values().iterator().next());
        }
        return readings.stream().reduce(Reading::and).orElseThrow();
    }

    private static boolean mustNotBeTried(Spot spot) {
        boolean fibre = spot.senses().stream().anyMatch(s -> s.kind().namesOneFibre() || s.kind() == WordKind.PAIR);
        boolean neutral = spot.senses().stream().anyMatch(s -> s.kind().isNeutral());
        return (fibre && neutral)
                || spot.senses().stream().anyMatch(s -> s.kind().isRefused());
    }

    private List<Spot> chosen(Map<String, Spot> open, int way) {
        Map<String, List<Entry>> choice = new HashMap<>();
        int rest = way;
        for (Spot spot : open.values()) {
            choice.put(
                    spot.text(), List.of(spot.senses().get(rest % spot.senses().size())));
            rest /= spot.senses().size();
        }
        return spots.stream()
                .map(s -> s.isOpen() ? s.meaning(choice.getOrDefault(s.text(), s.senses())) : s)
                .toList();
    }

    /** Whether each open word is one word of a language and else an abbreviation: its fault as a word is the one to tell. */
    private static boolean areWordsBesideCodes(Map<String, Spot> open) {
        return open.values().stream()
                .allMatch(s ->
                        s.senses().stream().filter(e -> !e.isOfAllLanguages()).count() == 1
                                && !s.senses().get(0).isOfAllLanguages());
    }

    private static boolean sameFault(List<Unreadable> broken) {
        return broken.stream()
                .allMatch(b -> b.from() == broken.get(0).from()
                        && b.because().equals(broken.get(0).because()));
    }

    private Unreadable manyReadings(Spot spot) {
        return Unreadable.readings(text, spot);
    }
}
