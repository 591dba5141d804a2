package campcloth.rest;

import campcloth.advice.WetSpell;
import io.swagger.v3.oas.annotations.media.Schema;

/** What wet clothes cost in a spell, already off the insulation: from memory of measurements, hence the wide intervals. */
@Schema(name = "WetSpell", description = "From memory of measurements of wet clothing; whatever the fibre")
record WetBody(
        String spell,

        @Schema(description = "insulation as worn that is lost, clo")
        double lostClo,

        double lostCloLow,
        double lostCloHigh,

        @Schema(description = "heat that drying takes from the wearer, W/m2")
        double dryingWm2,

        double dryingWm2Low,
        double dryingWm2High) {

    static WetBody of(WetSpell wet) {
        return new WetBody(
                wet.spell(),
                Rounded.to(wet.loss().lostClo().value(), 2),
                Rounded.to(wet.loss().lostClo().low(), 2),
                Rounded.to(wet.loss().lostClo().high(), 2),
                Rounded.to(wet.loss().dryingWm2().value(), 0),
                Rounded.to(wet.loss().dryingWm2().low(), 0),
                Rounded.to(wet.loss().dryingWm2().high(), 0));
    }
}
