package campcloth.rest;

import campcloth.fire.ExposureClass;
import campcloth.fire.FireGrade;
import campcloth.fire.FireHazard;
import campcloth.fire.FireReason;
import campcloth.fire.FireWarning;
import campcloth.fire.MeltWarning;
import campcloth.fire.OutfitHazard;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How one cloth stands at one fire. The numbers order cloths; they are no physical measure. */
record FireAnswer(
        @Schema(description = "how readily it catches and spreads flame, 0 least to 100 worst")
        double spread,

        @Schema(description = "how much it can melt onto its wearer, 0 nothing melts to 100 worst")
        double melt,

        @Schema(description = "both together at this fire, 0 to 100; never below what either alone would give")
        double hazard,

        @Schema(description = "quarter of the hazard") FireGrade grade,
        MeltWarning meltWarning,

        @Schema(description = "share of the mass that melts or must be presumed to")
        double meltablePercent,

        @Schema(description = "what of the fire reaches the wearer")
        ExposureClass reach,

        @Schema(description = "radiant flux there; null in the near field, without a distance and without a fire")
        @Nullable
        Double fluxKwM2,

        @Schema(description = "distance to keep from the fire's centre: an estimate for a steady fire")
        double standBackM,

        @Schema(description = "what sets that distance, and the margin in it")
        String standBackBecause,

        HeatAnswer heat,

        @Schema(description = "each way in which the fire threatens the cloth there; none without a fire")
        List<ThreatAnswer> threats,

        List<WarningBody> warnings,
        List<String> reasons,

        @Schema(description = "what nobody said of the cloth and what was taken for it")
        List<String> presumed,

        List<String> cautions,

        @Schema(description = "the whole outfit, the worst of its parts in everything; null where none was told")
        @Nullable
        OutfitHazardBody outfit,

        @Schema(
                description =
                        "what would better it with what is sewn in; empty where the grade is below HIGH and no melting is warned of")
        List<WhatIfBody> whatIf,

        BurnTestBody burnTest) {

    /** Something to tell the wearer. */
    @Schema(name = "FireWarning")
    record WarningBody(FireWarning.Code code, FireWarning.Severity severity, String text) {

        static WarningBody of(FireWarning warning) {
            return new WarningBody(warning.code(), warning.severity(), warning.text());
        }
    }

    static FireAnswer of(
            FireHazard hazard,
            Optional<OutfitHazard> outfit,
            List<FireWarning> warnings,
            List<String> presumed,
            List<String> cautions,
            List<WhatIfBody> whatIf,
            BurnTestBody burnTest) {
        return new FireAnswer(
                Rounded.to(hazard.spread(), 2),
                Rounded.to(hazard.melt(), 2),
                Rounded.to(hazard.hazard(), 2),
                hazard.grade(),
                hazard.meltWarning(),
                Rounded.to(hazard.meltablePercent(), 2),
                hazard.reach(),
                hazard.fluxKwM2().map(flux -> Rounded.to(flux, 4)).orElse(null),
                Rounded.to(hazard.standBackM(), 2),
                hazard.standBack().because(),
                HeatAnswer.of(hazard.heat()),
                hazard.threats().stream().map(ThreatAnswer::of).toList(),
                warnings.stream().map(WarningBody::of).toList(),
                hazard.reasons().stream().map(FireReason::sentence).toList(),
                presumed,
                cautions,
                outfit.map(OutfitHazardBody::of).orElse(null),
                whatIf,
                burnTest);
    }
}
