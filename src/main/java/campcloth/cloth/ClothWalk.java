package campcloth.cloth;

import java.util.function.Consumer;

/** Cloths that go by one after the other, so that they may be more than memory holds. */
@FunctionalInterface
public interface ClothWalk {

    /** Shows every one of them. */
    void each(Consumer<KeptCloth> visitor);
}
