package campcloth.supply;

import campcloth.cloth.Finish;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words in cells: what a weave, a surface, a finish, a yes or a no is called. A word that is not known is refused. */
final class Meanings {

    private final ListWords words;

    Meanings(ListWords words) {
        this.words = words;
    }

    /** Refuses a meaning that is none. */
    static void check(ListWords.Kind kind, String means) {
        switch (kind) {
            case WEAVE -> Weave.valueOf(means);
            case SURFACE -> Surface.valueOf(means);
            case FINISH -> Finish.valueOf(means);
            case NAP, STRETCH -> {
                if (!means.equals("yes") && !means.equals("no")) {
                    throw new IllegalArgumentException(means);
                }
            }
            case HEADER -> Column.valueOf(means);
        }
    }

    Weave weave(String cell) {
        return constant("weave", ListWords.Kind.WEAVE, cell, Weave.class);
    }

    Surface surface(String cell) {
        return constant("surface", ListWords.Kind.SURFACE, cell, Surface.class);
    }

    Finish finish(String cell) {
        return constant("finish", ListWords.Kind.FINISH, cell, Finish.class);
    }

    FlameTreatment flameTreatment(String cell) {
        return own(FlameTreatment.class, cell).orElseThrow(() -> unknown("flameTreatment", cell, FlameTreatment.class));
    }

    boolean yes(String field, ListWords.Kind kind, String cell) {
        String means = words.meaning(kind, cell).orElse(cell.toLowerCase(Locale.ROOT));
        return switch (means) {
            case "yes" -> true;
            case "no" -> false;
            default ->
                throw Refused.of(
                        field,
                        Words.quoted(cell) + " is neither yes nor no",
                        "write yes or no, or leave the cell empty");
        };
    }

    private <E extends Enum<E>> E constant(String field, ListWords.Kind kind, String cell, Class<E> type) {
        return own(type, cell)
                .or(() -> words.meaning(kind, cell).map(name -> Enum.valueOf(type, name)))
                .orElseThrow(() -> unknown(field, cell, type));
    }

    private static <E extends Enum<E>> Optional<E> own(Class<E> type, String cell) {
        String name = ListWords.plain(cell).replace(' ', '_').toUpperCase(Locale.ROOT);
        return Arrays.stream(type.getEnumConstants())
                .filter(one -> one.name().equals(name))
                .findFirst();
    }

    private static <E extends Enum<E>> Refused unknown(String field, String cell, Class<E> type) {
        return Refused.of(
                field,
                Words.quoted(cell) + " is not a word known for it",
                "write one of " + List.of(type.getEnumConstants()) + ", or leave the cell empty");
    }
}
