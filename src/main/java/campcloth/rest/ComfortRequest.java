package campcloth.rest;

import campcloth.comfort.BareCase;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One surrounding and one clothing. */
record ComfortRequest(
        @Schema(example = "-5") @NotNull Double airC,

        @Schema(example = "-5", description = "mean radiant temperature; that of the air where it is left out")
        @Nullable
        Double radiantC,

        @Schema(
                example = "3",
                description =
                        "speed of the air relative to the wearer; the wind chill takes it as the wind at 10 m height")
        @NotNull
        Double windMs,

        @Schema(example = "70") @NotNull Double humidityPercent,

        @Schema(example = "2.0", description = "metabolic rate") @NotNull
        Double met,

        @Schema(
                example = "2.0",
                description =
                        "insulation: ISO 11079 takes it as basic, before wind and walking, PMV and the two-node model as worn")
        @NotNull
        Double clo,

        @Schema(
                description =
                        "walking speed, between what ISO 11079 takes from met, as where it is left out, and 1.2; below"
                                + " and above it is taken to these ends, as the standard does")
        @Nullable
        Double walkingMs,

        @Schema(example = "100", description = "of the outermost cloth, l/(m2 s); 50 where it is left out") @Nullable
        Double airPermeability,

        @Schema(description = "relative air speed for PMV alone; windMs where it is left out") @Nullable
        Double pmvAirSpeedMs) {

    private static final double USUAL_PERMEABILITY = 50;

    BareCase bareCase() {
        return new BareCase(
                airC,
                Objects.requireNonNullElse(radiantC, airC),
                windMs,
                humidityPercent,
                met,
                clo,
                Optional.ofNullable(walkingMs),
                Objects.requireNonNullElse(airPermeability, USUAL_PERMEABILITY),
                Objects.requireNonNullElse(pmvAirSpeedMs, windMs));
    }

    /** What was taken where nobody said, and how the models differ in what they take, in sentences. */
    List<String> presumed() {
        List<String> presumed = new ArrayList<>();
        if (radiantC == null) {
            presumed.add(
                    "No radiant temperature was given: that of the air was taken, so no sun, no fire, no clear sky.");
        }
        if (walkingMs == null) {
            presumed.add("No walking speed was given: ISO 11079 takes its own from the metabolic rate.");
        }
        if (airPermeability == null) {
            presumed.add("No air permeability was given: 50 l/(m2 s) was taken for the outermost cloth.");
        }
        if (pmvAirSpeedMs == null) {
            presumed.add("No air speed was given for PMV: it takes windMs.");
        }
        presumed.add("The wind chill takes windMs as the wind at 10 m height.");
        presumed.add(
                "PMV and the two-node model take clo as worn: wind and walking do not lessen it there. The two-node"
                        + " body stands for an hour in ordinary permeable clothing.");
        return presumed;
    }
}
