package campcloth.rest;

import campcloth.garment.Measurements;
import campcloth.garment.Sizes;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Measurements and size told of a wearer, turned into what the core takes. */
final class ToldWearer {

    private ToldWearer() {}

    /** Refuses a size that is not known, under {@code size}. */
    static Measurements of(@Nullable Map<String, Double> wearer, @Nullable String size, Sizes sizes) {
        Measurements given = Measurements.of(wearer == null ? Map.of() : wearer);
        return size == null ? given : given.ofSize(sizes.named(size));
    }
}
