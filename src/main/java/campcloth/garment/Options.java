package campcloth.garment;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/** The options chosen for one garment, by key: each a {@link Boolean} or a {@link Number}. */
public final class Options {

    /** Nothing chosen: everything as usual. */
    public static final Options USUAL = new Options(Map.of());

    private final Map<String, Object> chosen;

    private Options(Map<String, Object> chosen) {
        this.chosen = chosen;
    }

    /** The options chosen; refuses values that are neither yes, no nor a number. */
    public static Options of(Map<String, ?> chosen) {
        Map<String, Object> copy = new LinkedHashMap<>();
        chosen.forEach((key, value) -> {
            if (!(value instanceof Boolean || value instanceof Number)) {
                throw Refused.of(key, "is neither true, false nor a number", "give true, false or a number");
            }
            copy.put(key, value);
        });
        return new Options(copy);
    }

    public Options with(String key, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(chosen);
        more.put(key, value);
        return of(more);
    }

    /** Refuses options that the design does not have. */
    public void checkKnown(Collection<Option> known) {
        for (String key : chosen.keySet()) {
            if (known.stream().noneMatch(option -> option.key().equals(key))) {
                throw Refused.of(
                        key,
                        "is not an option of this design",
                        "use one of "
                                + String.join(
                                        ", ", known.stream().map(Option::key).toList()));
            }
        }
    }

    public boolean yes(Option option) {
        if (!(option.value() instanceof Option.YesNo yesNo)) {
            throw new IllegalArgumentException(option.key() + " is not a yes or no");
        }
        Object value = chosen.getOrDefault(option.key(), yesNo.usual());
        if (value instanceof Boolean yes) {
            return yes;
        }
        throw Refused.of(option.key(), "is a number", "give true or false");
    }

    public double cm(Option option) {
        if (!(option.value() instanceof Option.Cm cm)) {
            throw new IllegalArgumentException(option.key() + " is not a length");
        }
        Object value = chosen.getOrDefault(option.key(), cm.usualCm());
        if (value instanceof Number number) {
            return cm.range().check(number.doubleValue());
        }
        throw Refused.of(option.key(), "is true or false", "give a number of cm");
    }

    public int count(Option option) {
        if (!(option.value() instanceof Option.Count count)) {
            throw new IllegalArgumentException(option.key() + " is not a number of things");
        }
        Object value = chosen.getOrDefault(option.key(), count.usual());
        if (!(value instanceof Number number)) {
            throw Refused.of(option.key(), "is true or false", "give a whole number");
        }
        double whole = count.range().check(number.doubleValue());
        if (whole != Math.rint(whole)) {
            throw Refused.of(option.key(), "is " + Words.exact(whole), "give a whole number");
        }
        return (int) whole;
    }
}
