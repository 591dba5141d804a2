package campcloth.figure;

import java.util.List;
import java.util.function.Supplier;

/** A value that was refused, with every reason; the edges turn it into an answer that names the fields. */
public final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Refusal> refusals;

    public Refused(List<Refusal> refusals) {
        super(String.join(
                " | ",
                refusals.stream().map(r -> r.field() + ": " + r.sentence()).toList()));
        this.refusals = List.copyOf(refusals);
    }

    public static Refused of(String field, String because, String remedy) {
        return new Refused(List.of(new Refusal(field, because, remedy)));
    }

    public List<Refusal> refusals() {
        return refusals;
    }

    /** Runs what makes a part, and names the owner in front of every field that the part refuses. */
    public static <T> T within(String owner, Supplier<T> part) {
        try {
            return part.get();
        } catch (Refused refused) {
            throw new Refused(
                    refused.refusals.stream().map(r -> r.within(owner)).toList());
        }
    }

    /** Runs what makes a thing, and begins every reason with the name that the giver calls it by. */
    public static <T> T named(String name, Supplier<T> part) {
        try {
            return part.get();
        } catch (Refused refused) {
            throw new Refused(refused.refusals.stream()
                    .map(r -> new Refusal(r.field(), Words.quoted(name) + ": " + r.because(), r.remedy()))
                    .toList());
        }
    }
}
