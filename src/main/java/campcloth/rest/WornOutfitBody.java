package campcloth.rest;

import campcloth.advice.Verdict;
import campcloth.cloth.Outfit;
import campcloth.fire.FireGrade;
import campcloth.fire.FireJudgement;
import campcloth.fire.MeltWarning;
import campcloth.fire.PartJudgement;
import campcloth.fire.WornOutfit;
import campcloth.rest.AdviceAnswer.RuleBody;
import campcloth.rest.FireAnswer.WarningBody;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What fire and rules say of what is worn besides the garment: the same whatever its cloth. */
@Schema(
        name = "WornOutfit",
        description =
                "What is worn besides, judged for fire and by the rules. While any of it is ruled out, no cloth is suitable."
                        + " What is sewn into the garment is judged with each cloth.")
record WornOutfitBody(
        @Schema(description = "the strictest of the parts; null where none was told") @Nullable
        Verdict verdict,

        MeltWarning meltWarning,

        @Schema(description = "the part with the greatest hazard; null without a fire") @Nullable
        String worst,

        List<Part> parts,

        @Schema(description = "what nobody told of, and what was not judged")
        List<String> notTold) {

    /** One garment worn besides. */
    @Schema(name = "WornPart")
    record Part(
            PartName part,
            Verdict verdict,
            double hazard,

            @Schema(description = "null without a fire") @Nullable
            FireGrade grade,

            MeltWarning meltWarning,

            @Schema(description = "distance to keep; null without a fire") @Nullable
            Double standBackM,

            List<WarningBody> warnings,
            List<RuleBody> rulesApplied) {

        static Part of(PartJudgement part) {
            FireJudgement judged = part.judgement();
            return new Part(
                    PartName.of(part.part()),
                    gated(judged.gate()),
                    Rounded.to(judged.hazard(), 1),
                    judged.worst().map(worst -> worst.hazard().grade()).orElse(null),
                    judged.meltWarning(),
                    judged.spells().stream()
                            .map(spell -> Rounded.to(spell.hazard().standBackM(), 2))
                            .max(Comparator.naturalOrder())
                            .orElse(null),
                    judged.warnings().stream().map(WarningBody::of).toList(),
                    judged.rules().stream().map(RuleBody::of).toList());
        }
    }

    static WornOutfitBody of(Outfit outfit, List<PartJudgement> parts) {
        Optional<PartJudgement> worst = parts.stream()
                .filter(part -> part.judgement().hazard() > 0)
                .max(Comparator.comparingDouble(part -> part.judgement().hazard()));
        return new WornOutfitBody(
                parts.stream()
                        .map(part -> gated(part.judgement().gate()))
                        .max(Comparator.naturalOrder())
                        .orElse(null),
                parts.stream()
                        .map(part -> part.judgement().meltWarning())
                        .max(Comparator.naturalOrder())
                        .orElse(MeltWarning.NONE),
                worst.map(part -> part.part().name()).orElse(null),
                parts.stream().map(Part::of).toList(),
                WornOutfit.notTold(outfit));
    }

    private static Verdict gated(FireJudgement.Gate gate) {
        return switch (gate) {
            case CLEAR -> Verdict.SUITABLE;
            case CAUTION -> Verdict.CAUTION;
            case RULED_OUT -> Verdict.RULED_OUT;
        };
    }
}
