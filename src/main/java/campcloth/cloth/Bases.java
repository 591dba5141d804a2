package campcloth.cloth;

import campcloth.figure.Figure;
import java.util.Collection;

/**
 * How each figure of a cloth is known, in one number: what a count over a great many needs.
 *
 * @param packed three bits for each {@link Property} in their order: 0 where no figure is written, else one more than the basis
 */
public record Bases(int packed) {

    private static final int BITS = 3;
    private static final int MASK = (1 << BITS) - 1;

    private static final Property[] PROPERTIES = Property.values();

    public static Bases of(Cloth cloth) {
        int packed = 0;
        for (Property property : PROPERTIES) {
            int code = cloth.figure(property)
                    .map(Figure::basis)
                    .map(basis -> basis.ordinal() + 1)
                    .orElse(0);
            packed |= code << BITS * property.ordinal();
        }
        return new Bases(packed);
    }

    public boolean isWritten(Property property) {
        return code(property) != 0;
    }

    /** Where those properties stand in the number. */
    static int places(Collection<Property> properties) {
        return properties.stream()
                .mapToInt(property -> 1 << BITS * property.ordinal())
                .sum();
    }

    /**
     * Of how many properties somebody measured, declared or published the figure; see {@link Trait#known}. Nothing and an estimate are the
     * two codes whose lower bits are not set.
     */
    int known(int places) {
        return Integer.bitCount((packed | packed >>> 1) & places);
    }

    /** 0 where no figure is written, else one more than the number of its basis. */
    int code(Property property) {
        return packed >>> BITS * property.ordinal() & MASK;
    }
}
