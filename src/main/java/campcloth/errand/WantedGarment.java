package campcloth.errand;

import campcloth.cloth.Outfit;
import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.garment.Measurements;
import campcloth.garment.Options;
import campcloth.garment.Sizes;
import campcloth.plan.CuttingOrder;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The garment of an errand, as somebody told it.
 *
 * @param design key of the design
 * @param wearerCm measurements of the wearer by key, cm, as they were told
 * @param size key of a size for what was not measured, where one was named
 * @param touchesSkin whether its cloth touches the skin, where somebody said
 * @param count how many alike
 * @param options options of the design by key, each yes, no or a number
 * @param outfit what is worn with it or sewn into it besides its own cloth
 */
public record WantedGarment(
        String design,
        Map<String, Double> wearerCm,
        Optional<String> size,
        Optional<Boolean> touchesSkin,
        int count,
        Map<String, Object> options,
        Outfit outfit) {

    private static final Range COUNT = new Range("count", 1, 100, "garments");

    public WantedGarment {
        COUNT.check(count);
        wearerCm = Collections.unmodifiableMap(new TreeMap<>(wearerCm));
        options = Collections.unmodifiableMap(new TreeMap<>(options));
    }

    /** One, as usual in everything but the wearer. */
    public static WantedGarment usual(String design, Map<String, Double> wearerCm) {
        return new WantedGarment(design, wearerCm, Optional.empty(), Optional.empty(), 1, Map.of(), Outfit.UNTOLD);
    }

    /** The wearer, with the size for what was not measured; refuses a size that is not known. */
    public Measurements wearer(Sizes sizes) {
        return size.map(key -> Measurements.of(wearerCm).ofSize(sizes.named(key)))
                .orElseGet(() -> Measurements.of(wearerCm));
    }

    /** What is to be cut for it; refuses options that are neither yes, no nor a number. */
    public CuttingOrder.Line line(Sizes sizes) {
        return new CuttingOrder.Line(
                design, count, wearer(sizes), Refused.within("options", () -> Options.of(options)));
    }
}
