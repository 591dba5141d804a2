package campcloth.rest;

import campcloth.cloth.Outfit;
import campcloth.fire.ClothingUse;
import campcloth.garment.Measurements;
import campcloth.garment.Sizes;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The garment that a cloth is sought for. */
@Schema(name = "Garment")
record GarmentBody(
        @Schema(example = "tunic", description = "key of a design") @NotNull
        String design,

        @Schema(
                description =
                        "whether it touches the skin; where it is left out, the skin is presumed at the fire, and a shirt beneath in the cold")
        @Nullable
        Boolean nextToSkin,

        @Schema(description = "measurements in cm by key", example = "{\"chestCm\": 98}") @Nullable @Size(max = 40)
        Map<String, @NotNull Double> wearer,

        @Schema(description = "key of a size, for what was not measured; measurements given win", example = "W-M")
        @Nullable
        @Size(max = 40)
        String size,

        @Schema(
                description =
                        "ORDINARY where it is left out; the others are outside what we advise on and get no grade, only"
                                + " whom to ask")
        @Nullable
        ClothingUse use,

        @Schema(description = "what is worn with it or sewn into it besides its own cloth")
        @Nullable
        @Size(max = Outfit.MOST_PARTS)
        List<@NotNull @Valid OutfitBody> outfit) {

    Optional<Boolean> touchesSkin() {
        return Optional.ofNullable(nextToSkin);
    }

    Measurements measurements(Sizes sizes) {
        return ToldWearer.of(wearer, size, sizes);
    }
}
