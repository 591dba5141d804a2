package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.SearchWords;
import campcloth.fibre.Blend;
import campcloth.fibre.LabelVocabulary;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The words by which a cloth is found. Those of the composition are what fibres are called here and, as labels call them, in every
 * language of the vocabulary.
 *
 * @param name of the name
 * @param composition of the composition
 * @param note of the note
 * @param near of the name and of what the fibres are called here
 */
record ClothWords(List<String> name, List<String> composition, List<String> note, List<String> near) {

    /** @param composition of its blend, as {@link #composition(Blend, LabelVocabulary)} */
    static ClothWords of(Cloth cloth, List<String> composition) {
        List<String> name = SearchWords.of(cloth.name());
        Stream<String> blend = SearchWords.of(cloth.blend().words()).stream();
        return new ClothWords(
                name,
                composition,
                SearchWords.of(cloth.note()),
                Stream.concat(name.stream(), blend.filter(ClothWords::isNoNumber))
                        .toList());
    }

    /** What a blend is called here and on labels, each word once. */
    static List<String> composition(Blend blend, LabelVocabulary labels) {
        Stream<String> onLabels = blend.shares().stream()
                .map(Blend.Share::fibre)
                .flatMap(fibre -> labels.names(fibre).stream())
                .flatMap(words -> SearchWords.of(words).stream());
        return Stream.concat(SearchWords.of(blend.words()).stream(), onLabels)
                .distinct()
                .toList();
    }

    Stream<String> all() {
        return Stream.of(name, composition, note).flatMap(List::stream);
    }

    /** Written as PostgreSQL's full-text vector: each word and its stem at its place, with the weight of where it stands. */
    String vector(Function<String, String> stem) {
        StringBuilder vector = new StringBuilder();
        int place = 0;
        for (Map.Entry<Character, List<String>> part :
                List.of(Map.entry('A', name), Map.entry('B', composition), Map.entry('C', note))) {
            for (String word : part.getValue()) {
                place++;
                String at = ":" + place + part.getKey() + " ";
                vector.append(quoted(word))
                        .append(at)
                        .append(quoted(stem.apply(word)))
                        .append(at);
            }
        }
        return vector.toString();
    }

    /** A full-text query for texts that have all of the words or their stems, and of the last word perhaps only its beginning. */
    static String query(List<String> words, Function<String, String> stem) {
        int last = words.size() - 1;
        return words.stream()
                        .limit(last)
                        .map(word -> either(quoted(word), quoted(stem.apply(word))))
                        .collect(Collectors.joining(" & ", "", last > 0 ? " & " : ""))
                + either(quoted(words.get(last)) + ":*", quoted(stem.apply(words.get(last))));
    }

    private static String either(String one, String other) {
        return "(" + one + " | " + other + ")";
    }

    /** Words are letters and digits alone. */
    private static String quoted(String word) {
        return "'" + word + "'";
    }

    private static boolean isNoNumber(String word) {
        return !word.chars().allMatch(Character::isDigit);
    }
}
