package campcloth.fire;

import campcloth.cloth.Outfit;
import campcloth.fibre.Fibres;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Grades a whole outfit in an exposure: every part in its own place, and the worst of them stands. Nothing that is worn over a part
 * makes it better: a shirt melts under a wool coat too.
 */
public final class OutfitGrading {

    private OutfitGrading() {}

    public static OutfitHazard grade(WornCloth garment, Outfit outfit, Exposure exposure, Fibres fibres) {
        List<WornPart> parts = new ArrayList<>(List.of(WornOutfit.own(garment, outfit)));
        parts.addAll(WornOutfit.sewnIn(garment, outfit, fibres));
        parts.addAll(WornOutfit.wornBesides(outfit, fibres));
        List<PartHazard> hazards = new ArrayList<>();
        List<FireWarning> warnings = new ArrayList<>();
        for (WornPart part : parts) {
            FireHazard hazard = FireGrading.grade(part.worn(), exposure);
            hazards.add(new PartHazard(part, hazard));
            warnings.addAll(
                    PartWarnings.of(part, hazard.meltWarning(), FireWarnings.of(part.worn(), exposure, hazard)));
        }
        if (hazards.get(0).hazard().reach() != ExposureClass.NONE) {
            warnings.addAll(Scaffold.among(parts));
        }
        warnings.sort(Comparator.comparing(FireWarning::severity).reversed());
        return new OutfitHazard(hazards, warnings, WornOutfit.notTold(outfit));
    }
}
