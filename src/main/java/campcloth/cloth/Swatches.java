package campcloth.cloth;

import campcloth.figure.Refused;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The swatches of the cloths in the catalogue. Each method is one unit of work; a swatch that is added or removed changes the
 * figures of its cloth with it. Whoever tells two at once finds both. Who may read and change a cloth may do so with its swatches.
 */
public interface Swatches {

    /** So many of one cloth are kept. */
    int MOST = 100;

    /** The swatches of a cloth; empty where there is no such cloth. */
    Optional<SwatchHistory> of(String clothId);

    /** Hands on every swatch of the asker's own and of common cloths, by cloth and in the order they were told. */
    void each(Consumer<KeptSwatch> each);

    Outcome add(String clothId, Swatch swatch);

    Outcome remove(String clothId, String swatchId);

    /** How a change went. */
    sealed interface Outcome {
        /** Done; the cloth as it stands now. */
        record Done(KeptCloth cloth, KeptSwatch swatch) implements Outcome {}

        /** There is no such cloth. */
        record NoCloth() implements Outcome {}

        /** The cloth has no such swatch. */
        record NoSwatch() implements Outcome {}

        /** It has as many as are kept. */
        record Full() implements Outcome {

            /** Why it was not added. */
            public Refused refused() {
                return Refused.of(
                        "(body)",
                        "would be swatch " + (MOST + 1) + " of this cloth",
                        "remove swatches that say nothing any more; " + MOST + " of a cloth are kept");
            }
        }
    }
}
