package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Contrast;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.fire.Exposure;
import campcloth.fire.FireCautions;
import campcloth.fire.FireGrade;
import campcloth.fire.FireGrading;
import campcloth.fire.FireHazard;
import campcloth.fire.WornCloth;
import java.util.List;

/**
 * Cloths side by side at one fire, all worn in the same way. Knows no rules of an event; those win and can only be stricter. It
 * ranks nothing: less hazard than another cloth is no leave to wear either.
 *
 * @param exposure the fire and the wearer's place at it
 * @param hazards how each cloth stands there, in the order asked
 */
public record FireSideBySide(Exposure exposure, List<FireHazard> hazards) {

    public FireSideBySide {
        hazards = List.copyOf(hazards);
    }

    /** Of cloths completed by their estimates. */
    public static FireSideBySide of(List<Cloth> completed, Exposure exposure, Fit fit, Layer layer) {
        return new FireSideBySide(
                exposure,
                completed.stream()
                        .map(cloth -> FireGrading.grade(WornCloth.of(cloth, fit, layer), exposure))
                        .toList());
    }

    /** Share of a cloth that melts or must be presumed to, film or wax included, percent; asks for no fire. */
    public static double meltablePercent(Cloth completed) {
        return WornCloth.of(completed, Fit.LOOSE, Layer.SKIN).meltablePercent();
    }

    /** CLEAR where the grades differ: hazards within one grade are not told apart (project choice). */
    public Contrast contrast() {
        return hazards.stream().map(FireHazard::grade).distinct().count() > 1 ? Contrast.CLEAR : Contrast.WITHIN_ERROR;
    }

    /** Whether the cloth at a place is graded as not for this fire: then nothing else that it is good at counts. */
    public boolean rulesOut(int place) {
        return hazards.get(place).grade() == FireGrade.SEVERE;
    }

    public List<String> cautions() {
        return FireCautions.forReach(exposure.reach(), List.of());
    }
}
