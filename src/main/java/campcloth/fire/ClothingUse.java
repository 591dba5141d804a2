package campcloth.fire;

import java.util.Optional;

/** What clothing is wanted for. Only the ordinary is graded; each of the others is a {@link Boundary} of that name. */
public enum ClothingUse {
    /** An adult's clothing at an event. */
    ORDINARY,
    FIRE_PERFORMANCE,
    PYROTECHNICS,
    CHILDRENS_COSTUME,
    PROTECTIVE_CLOTHING;

    /** The boundary it lies beyond; empty for what is advised on. */
    public Optional<Boundary> boundary() {
        return this == ORDINARY ? Optional.empty() : Optional.of(Boundary.valueOf(name()));
    }
}
