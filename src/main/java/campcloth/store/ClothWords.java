package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.SearchWords;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The words by which a cloth is found. A fibre stands in them under its key, too, so that what it is called in other languages need not
 * be kept with every cloth: {@link FibreNames} turns such a name into the key when it is asked for.
 *
 * @param name of the name
 * @param composition of the composition
 * @param note of the note
 * @param near of the name and of what the fibres are called here
 * @param fibres keys of the fibres
 */
record ClothWords(
        List<String> name, List<String> composition, List<String> note, List<String> near, List<String> fibres) {

    /** Before the key of a fibre, since it is no word: words are letters and digits alone. */
    private static final String KEY = "=";

    static ClothWords of(Cloth cloth) {
        List<String> name = SearchWords.of(cloth.name());
        List<String> composition = SearchWords.of(cloth.blend().words());
        return new ClothWords(
                name,
                composition,
                SearchWords.of(cloth.note()),
                Stream.concat(name.stream(), composition.stream().filter(ClothWords::isNoNumber))
                        .toList(),
                cloth.blend().shares().stream()
                        .map(share -> share.fibre().key())
                        .toList());
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
        for (String fibre : fibres) {
            place++;
            vector.append(quoted(KEY + fibre)).append(":").append(place).append("B ");
        }
        return vector.toString();
    }

    /**
     * A full-text query for texts that have all of the words, their stems or a fibre that is called so, and of the last word perhaps
     * only its beginning.
     */
    static String query(List<String> words, Function<String, String> stem, FibreNames names) {
        int last = words.size() - 1;
        return Stream.concat(
                        words.stream()
                                .limit(last)
                                .map(word -> either(word, "", stem, names.named(word, stem.apply(word)))),
                        Stream.of(either(
                                words.get(last),
                                ":*",
                                stem,
                                names.begun(words.get(last), stem.apply(words.get(last))))))
                .collect(Collectors.joining(" & "));
    }

    private static String either(String word, String sign, Function<String, String> stem, Collection<String> fibres) {
        return Stream.concat(
                        Stream.of(quoted(word) + sign, quoted(stem.apply(word))),
                        fibres.stream().map(fibre -> quoted(KEY + fibre)))
                .collect(Collectors.joining(" | ", "(", ")"));
    }

    private static String quoted(String word) {
        return "'" + word + "'";
    }

    private static boolean isNoNumber(String word) {
        return !word.chars().allMatch(Character::isDigit);
    }
}
