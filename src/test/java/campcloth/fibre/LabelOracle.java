package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/**
 * What must hold of any reading, found without the grammar: the words of the text are looked up again, longest first, and
 * the numbers are added up again.
 */
final class LabelOracle {

    private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\p{M}]*(?:'\\p{L}[\\p{L}\\p{M}]*)*");
    private static final Pattern NUMBER = Pattern.compile("(?<![\\p{L}\\d%)])\\.\\d+|\\d+(?:[.,]\\d+)?");
    private static final Pattern JOINT = Pattern.compile("[ \\t]*[-/]?\\s*");
    private static final Set<String> NAMES = Set.of("FIBRE", "CODE", "US_NAME", "OTHER", "UNKNOWN", "PAIR");
    private static final int MOST_WORDS = 8;

    private final Map<String, CSVRecord> rows = new HashMap<>();

    LabelOracle() {
        LabelFixture.rowsByLanguage()
                .values()
                .forEach(language -> language.forEach(row -> rows.put(folded(row.get("word")), row)));
    }

    List<String> words() {
        return rows.values().stream().map(row -> row.get("word")).sorted().toList();
    }

    void check(String text, LabelReading.Read read) {
        List<CSVRecord> known = known(text);
        assertThat(known).extracting(row -> row.get("kind")).doesNotContain("AMBIGUOUS", "IMITATION");
        Set<String> fibres = new HashSet<>();
        Set<String> parts = new HashSet<>();
        for (CSVRecord row : known) {
            if (NAMES.contains(row.get("kind"))) {
                fibres.addAll(List.of(row.get("means").split("; ")));
            }
            if (row.get("kind").equals("PART")) {
                parts.add(row.get("means"));
            }
        }
        assertThat(read.parts().stream()
                        .flatMap(p -> p.blend().shares().stream())
                        .map(s -> s.fibre().key())
                        .collect(Collectors.toSet()))
                .isEqualTo(fibres);
        assertThat(read.parts().stream().map(LabelReading.Part::part).filter(p -> !p.equals("whole")))
                .containsExactlyInAnyOrderElementsOf(parts);
        checkNumbers(text, read);
    }

    private static void checkNumbers(String text, LabelReading.Read read) {
        double sum = 0;
        Matcher numbers = NUMBER.matcher(text);
        while (numbers.find()) {
            sum += Double.parseDouble(numbers.group().replace(',', '.'));
        }
        double compositions = Math.round(sum / 100);
        assertThat(Math.abs(sum - 100 * compositions)).isLessThanOrEqualTo(0.5 * compositions + 1e-6);
        assertThat(compositions).isLessThanOrEqualTo(read.parts().size());
        for (LabelReading.Part part : read.parts()) {
            assertThat(part.blend().shares().stream()
                            .mapToDouble(Blend.Share::percent)
                            .sum())
                    .isBetween(100 - 1e-6, 100 + 1e-6);
        }
    }

    /** The rows of the vocabulary that the words of the text match; fails where a word matches none. */
    private List<CSVRecord> known(String text) {
        List<int[]> places = new ArrayList<>();
        Matcher words = WORD.matcher(text.replace('\u2019', '\''));
        while (words.find()) {
            places.add(new int[] {words.start(), words.end()});
        }
        List<CSVRecord> known = new ArrayList<>();
        int at = 0;
        while (at < places.size()) {
            int length = Math.min(MOST_WORDS, places.size() - at);
            Optional<CSVRecord> row = row(text, places, at, length);
            while (row.isEmpty() && length > 1) {
                length--;
                row = row(text, places, at, length);
            }
            int[] first = places.get(at);
            known.add(row.orElseThrow(
                    () -> new AssertionError("'" + text.substring(first[0], first[1]) + "' was skipped")));
            at += length;
        }
        return known;
    }

    private Optional<CSVRecord> row(String text, List<int[]> places, int at, int length) {
        StringBuilder phrase = new StringBuilder();
        boolean stroke = false;
        for (int i = at; i < at + length; i++) {
            if (i > at) {
                String between = text.substring(places.get(i - 1)[1], places.get(i)[0]);
                if (!JOINT.matcher(between).matches()) {
                    return Optional.empty();
                }
                stroke |= between.contains("/");
                phrase.append(' ');
            }
            phrase.append(text, places.get(i)[0], places.get(i)[1]);
        }
        return Optional.ofNullable(rows.get(folded(phrase.toString())));
    }

    private static String folded(String word) {
        return Normalizer.normalize(word.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .replace('\u2019', '\'')
                .replace('-', ' ')
                .replace("\u00DF", "ss")
                .replace("\u00E6", "ae")
                .replace("\u0153", "oe")
                .replace('\u00F8', 'o')
                .replace('\u0142', 'l')
                .replace('\u0111', 'd');
    }
}
