package campcloth.errand;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.garment.Measurements;
import campcloth.garment.Sizes;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Somebody else for whom the same garment is cut from the same length of cloth, with the same options.
 *
 * @param name what they are called on the sheet, at most 60 characters; may be empty
 * @param wearerCm their measurements by key, cm, as they were told
 * @param size key of a size for what was not measured, where one was named
 * @param count how many alike
 */
public record OtherWearer(String name, Map<String, Double> wearerCm, Optional<String> size, int count) {

    /** Length of the longest name, characters. */
    public static final int LONGEST_NAME = 60;

    private static final Range COUNT = new Range("count", 1, 100, "garments");

    public OtherWearer {
        name = name("name", name);
        COUNT.check(count);
        wearerCm = Collections.unmodifiableMap(new TreeMap<>(wearerCm));
    }

    static String name(String field, String told) {
        String name = told.strip();
        if (name.length() > LONGEST_NAME) {
            throw Refused.of(
                    field, "has " + name.length() + " characters", "give at most " + LONGEST_NAME + " characters");
        }
        return name;
    }

    /** Who it is, with the size for what was not measured; refuses a size that is not known. */
    Measurements wearer(Sizes sizes) {
        return WantedGarment.wearer(wearerCm, size, sizes);
    }
}
