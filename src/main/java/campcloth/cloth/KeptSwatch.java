package campcloth.cloth;

import java.time.Instant;
import java.util.Comparator;

/**
 * A swatch of a cloth in the catalogue.
 *
 * @param id how it is named in addresses
 * @param clothId cloth that it was cut from
 * @param number counts the swatches of that cloth; one that is removed leaves a gap or none
 * @param madeAt when it was told
 * @param swatch what was measured
 */
public record KeptSwatch(String id, String clothId, long number, Instant madeAt, Swatch swatch) {

    /** The day of the measurement decides; of one day, the one told last is newest. */
    static final Comparator<KeptSwatch> NEWEST_FIRST = Comparator.comparing(
                    (KeptSwatch kept) -> kept.swatch().measuredOn())
            .thenComparing(KeptSwatch::number)
            .reversed();
}
