package campcloth.errand;

import campcloth.cloth.Outfit;
import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.garment.Measurements;
import campcloth.garment.Options;
import campcloth.garment.Sizes;
import campcloth.plan.CuttingOrder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
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
 * @param wearerName what the wearer is called on the sheet; may be empty
 * @param others for whom else the same garment is cut from the same cloth
 */
public record WantedGarment(
        String design,
        Map<String, Double> wearerCm,
        Optional<String> size,
        Optional<Boolean> touchesSkin,
        int count,
        Map<String, Object> options,
        Outfit outfit,
        String wearerName,
        List<OtherWearer> others) {

    /** So many still fit on the pages of a sheet: project choice. */
    public static final int MOST_OTHERS = 4;

    private static final Range COUNT = new Range("count", 1, 100, "garments");

    public WantedGarment {
        COUNT.check(count);
        wearerName = OtherWearer.name("wearerName", wearerName);
        wearerCm = Collections.unmodifiableMap(new TreeMap<>(wearerCm));
        options = Collections.unmodifiableMap(new TreeMap<>(options));
        others = List.copyOf(others);
        if (others.size() > MOST_OTHERS) {
            throw Refused.of(
                    "others",
                    "has " + others.size() + " entries",
                    "plan for at most " + (MOST_OTHERS + 1) + " wearers on a sheet, and make another for the rest");
        }
    }

    /** For one wearer. */
    public WantedGarment(
            String design,
            Map<String, Double> wearerCm,
            Optional<String> size,
            Optional<Boolean> touchesSkin,
            int count,
            Map<String, Object> options,
            Outfit outfit) {
        this(design, wearerCm, size, touchesSkin, count, options, outfit, "", List.of());
    }

    /** One, as usual in everything but the wearer. */
    public static WantedGarment usual(String design, Map<String, Double> wearerCm) {
        return new WantedGarment(design, wearerCm, Optional.empty(), Optional.empty(), 1, Map.of(), Outfit.UNTOLD);
    }

    /** The wearer, with the size for what was not measured; refuses a size that is not known. */
    public Measurements wearer(Sizes sizes) {
        return wearer(wearerCm, size, sizes);
    }

    static Measurements wearer(Map<String, Double> wearerCm, Optional<String> size, Sizes sizes) {
        return size.map(key -> Measurements.of(wearerCm).ofSize(sizes.named(key)))
                .orElseGet(() -> Measurements.of(wearerCm));
    }

    /** How many garments in all. */
    public int inAll() {
        return count + others.stream().mapToInt(OtherWearer::count).sum();
    }

    /** What is to be cut, a line for each wearer; refuses options that are neither yes, no nor a number. */
    public List<CuttingOrder.Line> lines(Sizes sizes) {
        Options chosen = Refused.within("options", () -> Options.of(options));
        List<CuttingOrder.Line> lines = new ArrayList<>();
        lines.add(new CuttingOrder.Line(design, count, wearer(sizes), chosen));
        for (int i = 0; i < others.size(); i++) {
            OtherWearer other = others.get(i);
            Measurements wearer = Refused.within("others[" + i + "]", () -> other.wearer(sizes));
            lines.add(new CuttingOrder.Line(design, other.count(), wearer, chosen));
        }
        return lines;
    }
}
