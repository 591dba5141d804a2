package campcloth.rest;

import campcloth.fire.Boundary;
import org.jspecify.annotations.Nullable;

/** What clothing is wanted for. Only the ordinary is graded; each of the others is a {@link Boundary} of that name. */
enum ClothingUse {
    /** An adult's clothing at an event. */
    ORDINARY,
    FIRE_PERFORMANCE,
    PYROTECHNICS,
    CHILDRENS_COSTUME,
    PROTECTIVE_CLOTHING;

    /** Refuses what is outside; a use that nobody named is ordinary. */
    static void mustBeOrdinary(String field, @Nullable ClothingUse use) {
        if (use != null && use != ORDINARY) {
            throw new Outside(field, Boundary.valueOf(use.name()));
        }
    }
}
