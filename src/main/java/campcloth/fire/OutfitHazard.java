package campcloth.fire;

import java.util.Comparator;
import java.util.List;

/**
 * How a whole outfit stands in one exposure: the worst of its parts in everything, for a flame finds the worst part.
 *
 * @param parts every part that was judged, the garment's own cloth first
 * @param warnings what to tell the wearer of the outfit, most urgent first
 * @param notTold what nobody told
 */
public record OutfitHazard(List<PartHazard> parts, List<FireWarning> warnings, List<String> notTold) {

    public OutfitHazard {
        parts = List.copyOf(parts);
        warnings = List.copyOf(warnings);
        notTold = List.copyOf(notTold);
    }

    /** The part with the greatest hazard; the first told of several. */
    public PartHazard worst() {
        PartHazard worst = parts.get(0);
        for (PartHazard part : parts) {
            worst = part.hazard().hazard() > worst.hazard().hazard() ? part : worst;
        }
        return worst;
    }

    public double hazard() {
        return worst().hazard().hazard();
    }

    public FireGrade grade() {
        return parts.stream()
                .map(p -> p.hazard().grade())
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    public MeltWarning meltWarning() {
        return parts.stream()
                .map(p -> p.hazard().meltWarning())
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Distance to keep from the fire's centre, m. */
    public double standBackM() {
        return parts.stream().mapToDouble(p -> p.hazard().standBackM()).max().orElseThrow();
    }
}
