package campcloth.fire;

import campcloth.fire.FireWarning.Code;
import campcloth.fire.FireWarning.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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

    /** That the whole is graded worse than its cloth alone, or warned of more; empty where it is not. */
    public Optional<FireWarning> beyond(FireHazard clothAlone) {
        boolean worse =
                grade().compareTo(clothAlone.grade()) > 0 || meltWarning().compareTo(clothAlone.meltWarning()) > 0;
        return worse
                ? Optional.of(new FireWarning(
                        Code.OUTFIT,
                        urgency(),
                        "The grade is that of the cloth alone. With the "
                                + worst().part().name() + " the whole is graded " + grade()
                                + (meltWarning() == MeltWarning.NONE ? "" : ", and something in it melts")
                                + ": the outfit counts, not the cloth."))
                : Optional.empty();
    }

    private Severity urgency() {
        if (grade() == FireGrade.SEVERE || meltWarning() == MeltWarning.STOP) {
            return Severity.STOP;
        }
        return grade() == FireGrade.HIGH || meltWarning() == MeltWarning.WARN ? Severity.CAUTION : Severity.NOTE;
    }
}
