package campcloth.pages.found;

import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is done with fields that may have been left empty. */
final class Typed {

    private Typed() {}

    static boolean nothing(@Nullable Object... fields) {
        return Stream.of(fields).allMatch(Objects::isNull);
    }

    /** The number of a field that its part cannot be without. */
    static <T> T needed(String field, @Nullable T typed) {
        if (typed == null) {
            throw Refused.of(field, "is missing", "fill it in, or empty this whole measurement");
        }
        return typed;
    }

    /** All numbers of a list, each of which is needed. */
    static List<Double> all(String field, List<@Nullable Double> typed) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            all.add(needed(field + "[" + i + "]", typed.get(i)));
        }
        return all;
    }

    static void removeEmpty(List<?> typed) {
        typed.removeIf(Objects::isNull);
    }

    /** Takes empty ones away from the end. */
    static void trim(List<@Nullable Double> typed) {
        while (!typed.isEmpty() && typed.get(typed.size() - 1) == null) {
            typed.remove(typed.size() - 1);
        }
    }

    /** Adds empty ones until there are so many, at most so many as the core takes. */
    static <T> void fill(List<T> typed, int wanted, int most, Supplier<T> empty) {
        while (typed.size() < Math.min(wanted, most)) {
            typed.add(empty.get());
        }
    }

    /** The same for numbers. */
    static void fill(List<@Nullable Double> typed, int wanted, int most) {
        while (typed.size() < Math.min(wanted, most)) {
            typed.add(null);
        }
    }
}
