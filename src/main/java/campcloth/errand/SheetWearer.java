package campcloth.errand;

import campcloth.plan.GarmentWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * For whom one of the garments on a sheet is cut, where there are several.
 *
 * @param garment what its pieces are called by
 * @param name who it is; empty where nobody said
 * @param count how many alike
 * @param size key of the size for what was not measured, where one was named
 * @param measuredCm what was measured, cm, by its words
 */
public record SheetWearer(
        String garment, String name, int count, Optional<String> size, List<Map.Entry<String, Double>> measuredCm) {

    public SheetWearer {
        measuredCm = List.copyOf(measuredCm);
    }

    /** Everybody in the order of the plan; nobody where the garment is for one wearer. */
    static List<SheetWearer> of(CutErrand cut) {
        WantedGarment wanted = cut.errand().garment();
        if (wanted.others().isEmpty()) {
            return List.of();
        }
        List<SheetWearer> wearers = new ArrayList<>();
        wearers.add(of(cut, 0, new OtherWearer(wanted.wearerName(), wanted.wearerCm(), wanted.size(), wanted.count())));
        for (OtherWearer other : wanted.others()) {
            wearers.add(of(cut, wearers.size(), other));
        }
        return wearers;
    }

    private static SheetWearer of(CutErrand cut, int place, OtherWearer wearer) {
        List<GarmentWork> works = cut.works();
        String garment = place < works.size() ? works.get(place).garment() : "";
        List<Map.Entry<String, Double>> measured =
                Asking.design(cut.errand().garment().design()).measurements().stream()
                        .filter(measurement -> wearer.wearerCm().containsKey(measurement.key()))
                        .map(measurement ->
                                Map.entry(measurement.words(), wearer.wearerCm().get(measurement.key())))
                        .toList();
        return new SheetWearer(garment, wearer.name(), wearer.count(), wearer.size(), measured);
    }
}
