package campcloth.store;

import campcloth.cloth.SearchWords;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.fibre.LabelVocabulary;
import java.util.Collection;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Which fibres a word of a search may name: what labels call them, in every language of the vocabulary, word by word. */
@Component
class FibreNames {

    private static final Set<String> NOTHING = Set.of();

    private final NavigableMap<String, Set<String>> keysByWord = new TreeMap<>();

    FibreNames(Fibres fibres, LabelVocabulary labels, Stems stems) {
        for (Fibre fibre : fibres.all()) {
            Set<String> words = labels.names(fibre).stream()
                    .flatMap(name -> SearchWords.of(name).stream())
                    .collect(Collectors.toSet());
            words.forEach(word -> add(word, fibre));
            stems.of(words).values().forEach(stem -> add(stem, fibre));
        }
    }

    /** Keys of the fibres in whose names the word stands, or its stem. */
    Set<String> named(String word, String stem) {
        Set<String> keys = new TreeSet<>(keysByWord.getOrDefault(word, NOTHING));
        keys.addAll(keysByWord.getOrDefault(stem, NOTHING));
        return keys;
    }

    /** The same, and of those in whose names a word begins so. */
    Set<String> begun(String word, String stem) {
        Set<String> keys = named(word, stem);
        Map<String, Set<String>> beginning = keysByWord.subMap(word, true, word + Character.MAX_VALUE, false);
        beginning.values().stream().flatMap(Collection::stream).forEach(keys::add);
        return keys;
    }

    private void add(String word, Fibre fibre) {
        keysByWord.computeIfAbsent(word, any -> new TreeSet<>()).add(fibre.key());
    }
}
