package campcloth.cloth;

import campcloth.figure.Figure;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A cloth of the catalogue beside a cloth that was asked about.
 *
 * @param kept the neighbour
 * @param kinship how near it is
 */
public record Neighbour(KeptCloth kept, Kinship kinship) {

    /** Its figures that somebody measured, declared or published; no estimates. */
    public Map<Property, Figure> known() {
        Map<Property, Figure> known = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            Trait.known(kept.cloth(), property).ifPresent(figure -> known.put(property, figure));
        }
        return Collections.unmodifiableMap(known);
    }
}
