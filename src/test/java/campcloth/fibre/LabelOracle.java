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
    private static final Pattern JOINT = Pattern.compile("[\\t\\p{Zs}]*[-/]?[\\s\\p{Z}]*");
    private static final Set<String> NAMES = Set.of("FIBRE", "CODE", "US_NAME", "OTHER", "UNKNOWN", "PAIR");
    private static final Set<String> REFUSED = Set.of("AMBIGUOUS", "IMITATION");
    private static final Pattern SLIP = Pattern.compile("read '(.*)' as '(.*)'", Pattern.DOTALL);
    private static final String ALONE = "(?<![\\p{L}\\p{M}0-9])%s(?![\\p{L}\\p{M}0-9])";
    private static final int MOST_WORDS = 12;

    private final Map<String, List<CSVRecord>> rows = new HashMap<>();

    LabelOracle() {
        LabelFixture.rowsByLanguage()
                .values()
                .forEach(language ->
                        language.forEach(row -> rows.computeIfAbsent(folded(row.get("word")), w -> new ArrayList<>())
                                .add(row)));
    }

    void check(String written, LabelReading.Read read) {
        String text = mended(written, read.notes());
        Set<String> fibres = new HashSet<>();
        Set<String> maybeFibres = new HashSet<>();
        Set<String> parts = new HashSet<>();
        Set<String> maybeParts = new HashSet<>();
        for (List<CSVRecord> senses : known(text)) {
            boolean sure = senses.stream().map(LabelOracle::sense).distinct().count() == 1;
            assertThat(senses.stream().allMatch(row -> REFUSED.contains(row.get("kind"))))
                    .isFalse();
            for (CSVRecord row : senses) {
                if (NAMES.contains(row.get("kind"))) {
                    (sure ? fibres : maybeFibres)
                            .addAll(List.of(row.get("means").split("; ")));
                }
                if (sure && row.get("kind").equals("MODIFIER")) {
                    assertThat(read.notes()).anyMatch(note -> folded(note).contains(folded(row.get("word"))));
                }
                if (row.get("kind").equals("PART")) {
                    (sure ? parts : maybeParts).add(row.get("means"));
                }
            }
        }
        Set<String> found = read.parts().stream()
                .flatMap(p -> p.blend().shares().stream())
                .map(s -> s.fibre().key())
                .collect(Collectors.toSet());
        checkBetween(found, fibres, maybeFibres);
        checkBetween(
                read.parts().stream()
                        .map(LabelReading.Part::part)
                        .filter(p -> !p.equals("whole"))
                        .collect(Collectors.toSet()),
                read.notes().stream().anyMatch(n -> n.contains("was read once")) ? Set.of() : parts,
                maybeParts.isEmpty() ? parts : union(parts, maybeParts));
        checkNumbers(text, read);
    }

    /** What the words name for sure is there, and nothing that no word names. */
    private static void checkBetween(Set<String> found, Set<String> sure, Set<String> maybe) {
        assertThat(found).containsAll(sure);
        assertThat(union(sure, maybe)).containsAll(found);
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        Set<String> union = new HashSet<>(one);
        union.addAll(other);
        return union;
    }

    private static String sense(CSVRecord row) {
        return row.get("kind") + row.get("means").replaceAll("\\s*;\\s*", ";").strip();
    }

    /**
     * The text with each slip of the pen that a note tells put right; a note may only tell of what looks alike in print, or of a
     * space too few or too many.
     */
    private static String mended(String written, List<String> notes) {
        String text = Normalizer.normalize(written, Normalizer.Form.NFKC);
        for (String note : notes) {
            Matcher slip = SLIP.matcher(Normalizer.normalize(note, Normalizer.Form.NFKC));
            if (slip.matches()) {
                assertThat(skeleton(slip.group(2))).as(note).isEqualTo(skeleton(slip.group(1)));
                String slipped = Pattern.quote(slip.group(1)).replace(" ", "\\E[\\s\\p{Z}]\\Q");
                Matcher place = Pattern.compile(slip.group(2).equals("%") ? slipped : ALONE.formatted(slipped))
                        .matcher(text);
                assertThat(place.find()).as(note).isTrue();
                text = place.replaceAll(Matcher.quoteReplacement(slip.group(2)));
            }
        }
        return text;
    }

    private static String skeleton(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replaceAll("[\\s\\p{Z}-]", "")
                .replaceAll("[\u00b0\u00bao0]/[o0]", "%")
                .replace('o', '0')
                .replaceAll("[li|]", "1")
                .replace('s', '5');
    }

    private static void checkNumbers(String text, LabelReading.Read read) {
        double sum = 0;
        Matcher numbers = NUMBER.matcher(text);
        while (numbers.find()) {
            sum += Double.parseDouble(numbers.group().replace(',', '.'));
        }
        double compositions = Math.round(sum / 100);
        assertThat(Math.abs(sum - 100 * compositions)).isLessThanOrEqualTo(0.5 * compositions + 1e-6);
        if (read.notes().stream().noneMatch(note -> note.contains("was read once"))) {
            assertThat(compositions).isLessThanOrEqualTo(read.parts().size());
        }
        for (LabelReading.Part part : read.parts()) {
            assertThat(part.blend().shares().stream()
                            .mapToDouble(Blend.Share::percent)
                            .sum())
                    .isBetween(100 - 1e-6, 100 + 1e-6);
        }
    }

    /** The rows of the vocabulary that the words of the text match; fails where a word matches none. */
    private List<List<CSVRecord>> known(String text) {
        List<int[]> places = new ArrayList<>();
        List<String> found = new ArrayList<>();
        Matcher words = WORD.matcher(text.replace('\u2019', '\''));
        while (words.find()) {
            places.add(new int[] {words.start(), words.end()});
            found.add(folded(words.group()));
        }
        List<List<CSVRecord>> known = new ArrayList<>();
        int at = 0;
        while (at < places.size()) {
            int length = Math.min(MOST_WORDS, places.size() - at);
            Optional<List<CSVRecord>> row = row(text, places, found, at, length);
            while (row.isEmpty() && length > 1) {
                length--;
                row = row(text, places, found, at, length);
            }
            int[] first = places.get(at);
            known.add(row.orElseThrow(
                    () -> new AssertionError("'" + text.substring(first[0], first[1]) + "' was skipped")));
            at += length;
        }
        return known;
    }

    private Optional<List<CSVRecord>> row(String text, List<int[]> places, List<String> words, int at, int length) {
        for (int i = at + 1; i < at + length; i++) {
            String between = text.substring(places.get(i - 1)[1], places.get(i)[0]);
            if (!JOINT.matcher(between).matches()) {
                return Optional.empty();
            }
        }
        return Optional.ofNullable(rows.get(String.join(" ", words.subList(at, at + length))));
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
