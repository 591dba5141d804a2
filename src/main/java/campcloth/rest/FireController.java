package campcloth.rest;

import campcloth.cloth.Outfit;
import campcloth.fibre.Fibres;
import campcloth.fire.Exposure;
import campcloth.fire.FireCase;
import campcloth.fire.FireCautions;
import campcloth.fire.FireGrading;
import campcloth.fire.FireHazard;
import campcloth.fire.FireWarning;
import campcloth.fire.FireWarnings;
import campcloth.fire.OutfitAdvice;
import campcloth.fire.OutfitGrading;
import campcloth.fire.OutfitHazard;
import campcloth.fire.WornCloth;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The fire grading by itself: no event, no rules, no other criterion. */
@RestController
@Tag(name = "Fire", description = "The fire grading by itself: one cloth at one fire")
class FireController {

    private final Fibres fibres;
    private final Outfits outfits;
    private final OutfitAdvice advice;

    FireController(Fibres fibres, Outfits outfits, OutfitAdvice advice) {
        this.fibres = fibres;
        this.outfits = outfits;
        this.advice = advice;
    }

    @PostMapping("/api/fire")
    @Operation(
            operationId = "gradeFire",
            summary = "Grades the hazard of one cloth at one fire",
            description = "Knows no rules: those of the event, the venue and the law are for /api/advice to judge. An"
                    + " estimate from fibre data, not a flammability test.")
    FireAnswer grade(@Valid @RequestBody FireRequest request) {
        Outside.mustBeOrdinary("use", request.use());
        WornCloth cloth = request.cloth(fibres);
        Exposure exposure = request.exposure();
        FireHazard hazard = FireGrading.grade(cloth, exposure);
        Outfit outfit = outfits.of("outfit", request.outfit());
        Optional<OutfitHazard> whole = outfit.parts().isEmpty()
                ? Optional.empty()
                : Optional.of(OutfitGrading.grade(cloth, outfit, exposure, fibres));
        List<FireWarning> warnings = new ArrayList<>();
        whole.flatMap(worn -> worn.beyond(hazard)).ifPresent(warnings::add);
        warnings.addAll(FireWarnings.of(cloth, exposure));
        return FireAnswer.of(
                hazard,
                whole,
                warnings,
                request.presumed(),
                FireCautions.forReach(hazard.reach(), List.of()),
                WhatIfBody.of(advice.whatIf(
                        cloth, outfit, FireCase.bare(cloth, exposure).event())),
                request.burnTest(fibres));
    }
}
