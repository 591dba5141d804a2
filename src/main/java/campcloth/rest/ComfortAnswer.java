package campcloth.rest;

import campcloth.comfort.BareReadings;
import campcloth.comfort.Reading;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What each model says; null where it does not hold, with the reason in outOfRange. */
record ComfortAnswer(
        @Schema(description = "predicted mean vote, ISO 7730, -2 cool to 2 warm") @Nullable
        Double pmv,

        @Schema(description = "predicted percentage dissatisfied") @Nullable
        Double ppdPercent,

        @Schema(description = "standard effective temperature, two-node model") @Nullable
        Double setC,

        @Schema(description = "skin of the two-node body after an hour") @Nullable
        Double skinC,

        @Schema(description = "its core") @Nullable Double coreC,

        @Schema(description = "share of its skin that is wet, 0 to 1") @Nullable
        Double wettedness,

        @Schema(description = "required insulation to feel neutral, ISO 11079") @Nullable
        Double ireqNeutralClo,

        @Schema(description = "required insulation to keep the heat balance, ISO 11079") @Nullable
        Double ireqMinimalClo,

        @Schema(description = "what wind, walking and permeability leave of clo, ISO 11079") @Nullable
        Double resultantClo,

        @Schema(
                description =
                        "hours until the wearer has lost 40 Wh/m2, ISO 11079, minimal criterion; 8 where it is 8 or more."
                                + " An average adult in dry clothing: hands, feet and face reach their limits first.")
        @Nullable
        Double exposureLimitHours,

        @Schema(description = "the same by the neutral criterion") @Nullable
        Double exposureLimitNeutralHours,

        @Schema(description = "windMs taken as the wind at 10 m height") @Nullable
        Double windChillC,

        @Schema(description = "heat index of the US National Weather Service: shade, light wind") @Nullable
        Double heatIndexC,

        @Schema(
                description =
                        "wet bulb globe temperature, ISO 7243, estimated without sun: 0.7 natural wet bulb and 0.3 globe among"
                                + " surroundings of radiantC")
        @Nullable
        Double wbgtC,

        @Schema(
                description = "highest WBGT for an hour of that work, for people who are not used to heat; one layer of"
                        + " clothes")
        @Nullable
        Double wbgtReferenceC,

        List<PassedLimit> outOfRange,

        @Schema(description = "what was taken where nobody said, and what each model takes")
        List<String> presumed) {

    /** Why a model does not hold. */
    @Schema(name = "ModelOutOfRange")
    record PassedLimit(String model, String because) {}

    static ComfortAnswer of(BareReadings readings, List<String> presumed) {
        return new ComfortAnswer(
                number(readings.pmv()),
                number(readings.ppdPercent()),
                number(readings.setC()),
                number(readings.skinC()),
                number(readings.coreC()),
                number(readings.wettedness()),
                number(readings.ireqNeutralClo()),
                number(readings.ireqMinimalClo()),
                number(readings.resultantClo()),
                number(readings.exposureLimitHours()),
                number(readings.exposureLimitNeutralHours()),
                number(readings.windChillC()),
                number(readings.heatIndexC()),
                number(readings.wbgtC()),
                number(readings.wbgtReferenceC()),
                readings.outOfRange().stream()
                        .map(outside -> new PassedLimit(outside.model(), outside.because()))
                        .toList(),
                presumed);
    }

    private static @Nullable Double number(Reading reading) {
        return reading.inRange().map(value -> Rounded.to(value.value(), 4)).orElse(null);
    }
}
