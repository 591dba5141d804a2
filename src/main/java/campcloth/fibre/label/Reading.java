package campcloth.fibre.label;

import campcloth.fibre.Blend;
import campcloth.fibre.LabelReading;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What one way of reading a label comes to.
 *
 * @param parts the parts in the order of the label
 * @param notes what else a reader should know, in the order found
 */
record Reading(List<LabelReading.Part> parts, Set<String> notes) {

    /** Names of the cloth that shows; translations do not keep them apart. */
    private static final Set<String> OUTSIDE = Set.of("shell", "outer", "main", LabelReading.WHOLE);

    Reading {
        parts = List.copyOf(parts);
        notes = new LinkedHashSet<>(notes);
    }

    /** Whether both say the same of each part. */
    boolean agreesWith(Reading other) {
        if (parts.size() != other.parts.size()) {
            return false;
        }
        for (int i = 0; i < parts.size(); i++) {
            LabelReading.Part one = parts.get(i);
            LabelReading.Part two = other.parts.get(i);
            if (!sameName(one.part(), two.part()) || !same(one.blend(), two.blend())) {
                return false;
            }
        }
        return true;
    }

    /** This reading with what the other, which agrees, has to note. */
    Reading and(Reading other) {
        Set<String> both = new LinkedHashSet<>(notes);
        both.addAll(other.notes);
        return new Reading(parts, both);
    }

    Reading noting(String note) {
        Set<String> more = new LinkedHashSet<>(notes);
        more.add(note);
        return new Reading(parts, more);
    }

    /** As a label would have it: {@code shell: 100 % cotton; lining: 100 % silk}. */
    String inWords() {
        return parts.stream()
                .map(p -> (p.part().equals(LabelReading.WHOLE) ? "" : p.part() + ": ")
                        + p.blend().words())
                .collect(Collectors.joining("; "));
    }

    /** Whether both blends have the same shares, in whatever order. */
    static boolean same(Blend one, Blend two) {
        return shares(one).equals(shares(two));
    }

    /** Whether both name the same part, or both the cloth that shows. */
    static boolean sameName(String one, String two) {
        return one.equals(two) || (OUTSIDE.contains(one) && OUTSIDE.contains(two));
    }

    private static Map<String, Double> shares(Blend blend) {
        Map<String, Double> shares = new HashMap<>();
        blend.shares().forEach(s -> shares.put(s.fibre().key(), s.percent()));
        return shares;
    }
}
