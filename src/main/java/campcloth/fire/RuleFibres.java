package campcloth.fire;

import campcloth.fibre.Fibres;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Fibres as rules write them. */
final class RuleFibres {

    private RuleFibres() {}

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
