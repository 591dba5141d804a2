package campcloth.fire;

import campcloth.fibre.FibreFamily;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Fibres as rules write them. */
public final class RuleFibres {

    private RuleFibres() {}

    /** Keys of the fibres that may not be in the cloth; refuses, at {@code forbiddenFibres}, a name that is not known. */
    public static Set<String> forbidden(List<String> written, Fibres fibres) {
        return required("forbiddenFibres", written, fibres);
    }

    /** Keys of the only fibres that may be in it; refuses, at {@code allowedFibres}, a name that may be any fibre. */
    public static Set<String> allowed(List<String> written, Fibres fibres) {
        Set<String> keys = required("allowedFibres", written, fibres);
        keys.stream()
                .map(fibres::require)
                .filter(fibre -> fibre.family() == FibreFamily.UNNAMED)
                .findFirst()
                .ifPresent(unnamed -> {
                    throw Refused.of(
                            "allowedFibres",
                            "has '" + unnamed.key() + "', which may be any fibre",
                            "name the fibres that are allowed");
                });
        return keys;
    }

    private static Set<String> required(String field, List<String> written, Fibres fibres) {
        return IntStream.range(0, written.size())
                .mapToObj(i ->
                        fibres.require(written.get(i), field + "[" + i + "]").key())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    static String key(String written) {
        return written.strip().toLowerCase(Locale.ROOT);
    }

    /** Keys in the order of the alphabet. */
    static List<String> keys(Collection<String> written) {
        return written.stream().map(RuleFibres::key).sorted().distinct().toList();
    }

    /** One finding for each name that is no fibre's. */
    static List<Finding> notKnown(Collection<String> written, Fibres fibres) {
        return written.stream()
                .sorted()
                .filter(name -> fibres.named(key(name)).isEmpty())
                .map(name -> Finding.ask("'" + name + "' is not a fibre name known here: ask what it means."))
                .toList();
    }
}
