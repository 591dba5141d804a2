package campcloth.rest;

import campcloth.fire.FireGrade;
import campcloth.fire.MeltWarning;
import campcloth.fire.OutfitHazard;
import campcloth.fire.PartHazard;
import campcloth.rest.FireAnswer.WarningBody;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** How a whole outfit stands at one fire. */
@Schema(name = "OutfitHazard", description = "The worst of its parts in everything")
record OutfitHazardBody(
        FireGrade grade,
        double hazard,
        MeltWarning meltWarning,
        double standBackM,

        @Schema(description = "the part with the greatest hazard")
        String worst,

        List<Part> parts,
        List<WarningBody> warnings,

        @Schema(description = "what nobody told of, and what was not judged")
        List<String> notTold) {

    /** One part of it. */
    @Schema(name = "OutfitPartHazard")
    record Part(
            PartName part,
            double spread,
            double melt,
            double hazard,
            FireGrade grade,
            MeltWarning meltWarning,
            double standBackM) {

        static Part of(PartHazard part) {
            return new Part(
                    PartName.of(part.part()),
                    Rounded.to(part.hazard().spread(), 2),
                    Rounded.to(part.hazard().melt(), 2),
                    Rounded.to(part.hazard().hazard(), 2),
                    part.hazard().grade(),
                    part.hazard().meltWarning(),
                    Rounded.to(part.hazard().standBackM(), 2));
        }
    }

    static OutfitHazardBody of(OutfitHazard outfit) {
        return new OutfitHazardBody(
                outfit.grade(),
                Rounded.to(outfit.hazard(), 2),
                outfit.meltWarning(),
                Rounded.to(outfit.standBackM(), 2),
                outfit.worst().part().name(),
                outfit.parts().stream().map(Part::of).toList(),
                outfit.warnings().stream().map(WarningBody::of).toList(),
                outfit.notTold());
    }
}
