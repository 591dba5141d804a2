package campcloth.rest;

import campcloth.garment.Measurements;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The garment that a cloth is sought for. */
@Schema(name = "Garment")
record GarmentBody(
        @Schema(example = "tunic", description = "key of a design") @NotNull
        String design,

        @Schema(description = "whether it touches the skin; true where it is left out, the stricter case") @Nullable
        Boolean nextToSkin,

        @Schema(description = "measurements in cm by key", example = "{\"chestCm\": 98}") @Nullable @Size(max = 40)
        Map<String, @NotNull Double> wearer) {

    /** Touching the skin is the stricter case for itch and for melt. */
    boolean touchesSkin() {
        return nextToSkin == null || nextToSkin;
    }

    Measurements measurements() {
        return Measurements.of(wearer == null ? Map.of() : wearer);
    }
}
