package campcloth.supply;

import campcloth.cloth.Property;
import java.util.Optional;

/** What a column of a list can hold. */
public enum Column {
    /** Id of a cloth that is kept here, as our own exports carry it. */
    CLOTH_ID,
    /** The supplier's own number of the article. */
    KEY,
    NAME,
    /** Fibre content in the words of a label. */
    COMPOSITION,
    /** Fibre content by keys, as in our own files: {@code flax 70; polyester 30}. */
    BLEND,
    WEIGHT(Property.WEIGHT_GSM),
    WIDTH(Property.WIDTH_CM),
    THICKNESS(Property.THICKNESS_MM),
    AIR_PERMEABILITY(Property.AIR_PERMEABILITY_MM_S),
    VAPOUR_RESISTANCE(Property.VAPOUR_RESISTANCE_M2PA_W),
    SHRINK_WARP(Property.SHRINK_WARP_PERCENT),
    SHRINK_WEFT(Property.SHRINK_WEFT_PERCENT),
    FIBRE_DIAMETER(Property.FIBRE_DIAMETER_UM),
    FIBRE_DIAMETER_CV(Property.FIBRE_DIAMETER_CV_PERCENT),
    PRICE(Property.PRICE_PER_METRE),
    /** Currency of the price, in a column of its own. */
    CURRENCY,
    WEAVE,
    SURFACE,
    FINISH,
    NAP,
    STRETCH,
    NOTE,
    CARE,
    FLAME_TREATMENT;

    private final Optional<Property> property;

    Column() {
        this.property = Optional.empty();
    }

    Column(Property property) {
        this.property = Optional.of(property);
    }

    /** The figure that it holds, where it holds one. */
    public Optional<Property> property() {
        return property;
    }

    /** Name of the field in reports: that of the figure, or the word. */
    public String field() {
        return property.map(Property::field).orElseGet(() -> camel(name()));
    }

    private static String camel(String name) {
        StringBuilder text = new StringBuilder();
        for (String word : name.toLowerCase(java.util.Locale.ROOT).split("_")) {
            text.append(text.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return text.toString();
    }
}
