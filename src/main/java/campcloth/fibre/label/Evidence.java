package campcloth.fibre.label;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What the language of a label says about words that languages understand differently. The language is the one that all other
 * words share; where they share none, or there are no others, nothing is decided. A language that was told counts for more, except
 * where the other words share none with it. Words that stand on labels of any language are no evidence and are never ruled
 * out.
 */
final class Evidence {

    private final Map<String, Set<String>> languagesOf = new HashMap<>();
    private final Map<String, Integer> wordsOf = new HashMap<>();
    private final Set<String> spoken;

    private Evidence(List<Spot> spots, Set<String> spoken) {
        this.spoken = spoken;
        for (Spot spot : spots) {
            if (spot.senses().isEmpty() || spot.senses().stream().anyMatch(Entry::isOfAllLanguages)) {
                continue;
            }
            Set<String> languages = new HashSet<>();
            spot.senses().forEach(s -> languages.addAll(s.languages()));
            if (languagesOf.put(spot.text(), languages) == null) {
                languages.forEach(language -> wordsOf.merge(language, 1, Integer::sum));
            }
        }
    }

    /**
     * The spots with the meanings that are left.
     *
     * @param spoken the languages of the label where they are known, else none
     * @param notes receives what was decided by language
     */
    static List<Spot> weighed(List<Spot> spots, Set<String> spoken, Set<String> notes) {
        if (spots.stream().noneMatch(Spot::isOpen)) {
            return spots;
        }
        Evidence evidence = new Evidence(spots, spoken);
        return spots.stream()
                .map(spot -> spot.isOpen() ? evidence.weighed(spot, notes) : spot)
                .toList();
    }

    private Spot weighed(Spot spot, Set<String> notes) {
        Set<String> languages = languages(spot);
        List<Entry> left = new ArrayList<>();
        for (Entry sense : spot.senses()) {
            if (sense.isOfAllLanguages() || sense.languages().stream().anyMatch(languages::contains)) {
                left.add(sense);
            }
        }
        if (languages.isEmpty()
                || left.isEmpty()
                || left.size() == spot.senses().size()) {
            return spot;
        }
        if (left.size() == 1) {
            notes.add(decided(left.get(0), languages));
        }
        return spot.meaning(left);
    }

    /** The languages that were told, as long as the other words do not speak against all of them; else those of the others. */
    private Set<String> languages(Spot spot) {
        Set<String> shared = sharedByOthers(spot);
        boolean contradicts = !shared.isEmpty() && spoken.stream().noneMatch(shared::contains);
        return spoken.isEmpty() || contradicts ? shared : spoken;
    }

    private Set<String> sharedByOthers(Spot spot) {
        Set<String> own = languagesOf.getOrDefault(spot.text(), Set.of());
        int others = languagesOf.size() - (own.isEmpty() ? 0 : 1);
        Set<String> shared = new TreeSet<>();
        if (others > 0) {
            wordsOf.forEach((language, words) -> {
                if (words - (own.contains(language) ? 1 : 0) == others) {
                    shared.add(language);
                }
            });
        }
        return shared;
    }

    private static String decided(Entry sense, Set<String> languages) {
        Set<String> read = new TreeSet<>(sense.isOfAllLanguages() ? languages : sense.languages());
        read.retainAll(languages);
        return "'" + sense.word() + "' was read as " + sense.meaning() + ", since the label is "
                + read.stream().map(Entry::languageName).collect(Collectors.joining(" or "))
                + "; in another language it means something else";
    }
}
