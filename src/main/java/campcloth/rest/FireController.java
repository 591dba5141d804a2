package campcloth.rest;

import campcloth.fibre.Fibres;
import campcloth.fire.Exposure;
import campcloth.fire.FireCase;
import campcloth.fire.FireCautions;
import campcloth.fire.FireGrading;
import campcloth.fire.FireHazard;
import campcloth.fire.FireWarnings;
import campcloth.fire.WhatIf;
import campcloth.fire.WornCloth;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The fire grading by itself: no event, no rules, no other criterion. */
@RestController
@Tag(name = "Fire", description = "The fire grading by itself: one cloth at one fire")
class FireController {

    private final Fibres fibres;
    private final WhatIf whatIf;

    FireController(Fibres fibres, WhatIf whatIf) {
        this.fibres = fibres;
        this.whatIf = whatIf;
    }

    @PostMapping("/api/fire")
    @Operation(
            operationId = "gradeFire",
            summary = "Grades the hazard of one cloth at one fire",
            description = "Knows no rules: those of the event, the venue and the law are for /api/advice to judge. An"
                    + " estimate from fibre data, not a flammability test.")
    FireAnswer grade(@Valid @RequestBody FireRequest request) {
        WornCloth cloth = request.cloth(fibres);
        Exposure exposure = request.exposure();
        FireHazard hazard = FireGrading.grade(cloth, exposure);
        return FireAnswer.of(
                hazard,
                FireWarnings.of(cloth, exposure),
                request.presumed(),
                FireCautions.forReach(hazard.reach(), List.of()),
                WhatIfBody.of(whatIf, FireCase.bare(cloth, exposure)),
                request.burnTest(fibres));
    }
}
