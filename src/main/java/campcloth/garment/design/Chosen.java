package campcloth.garment.design;

import campcloth.garment.Option;
import campcloth.garment.Options;
import java.util.List;
import java.util.Optional;

/**
 * What was chosen of the options that a design has.
 *
 * @param known the design's options
 * @param options the choice
 */
record Chosen(List<Option> known, Options options) {

    /** Refuses options that the design does not have. */
    Chosen {
        options.checkKnown(known);
    }

    /** Whether it was chosen; no where the design has no such option. */
    boolean yes(String key) {
        return find(key).map(options::yes).orElse(false);
    }

    /** The length chosen; 0 where the design has no such option. */
    double cm(String key) {
        return find(key).map(options::cm).orElse(0.0);
    }

    /** The number chosen; 0 where the design has no such option. */
    int count(String key) {
        return find(key).map(options::count).orElse(0);
    }

    private Optional<Option> find(String key) {
        return known.stream().filter(option -> option.key().equals(key)).findFirst();
    }
}
