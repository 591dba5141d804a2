package campcloth.garment;

import campcloth.figure.Figure;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The body measurements of people of one size, for whoever was not measured.
 *
 * @param key such as {@code W-M}
 * @param name whose size it is, in words
 * @param cm measurements by the key of {@link Measurement}, cm
 */
public record Size(String key, String name, Map<String, Figure> cm) {

    public Size {
        cm = Collections.unmodifiableMap(new LinkedHashMap<>(cm));
    }
}
