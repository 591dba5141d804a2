package campcloth.rest;

import campcloth.fire.Boundary;
import campcloth.fire.ClothingUse;
import org.jspecify.annotations.Nullable;

/** Asked for clothing that is outside what is advised on. */
final class Outside extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String field;
    private final Boundary boundary;

    Outside(String field, Boundary boundary) {
        super(boundary.because());
        this.field = field;
        this.boundary = boundary;
    }

    String field() {
        return field;
    }

    Boundary boundary() {
        return boundary;
    }

    /** Refuses what is outside; a use that nobody named is ordinary. */
    static void mustBeOrdinary(String field, @Nullable ClothingUse use) {
        if (use != null) {
            use.boundary().ifPresent(boundary -> {
                throw new Outside(field, boundary);
            });
        }
    }
}
