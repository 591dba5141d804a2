package campcloth.rest;

import campcloth.cloth.Property;
import campcloth.cloth.WindReference;
import campcloth.cloth.WindTest;
import campcloth.figure.Refused;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A bag emptied through this cloth and through one that is known. */
@Schema(
        name = "WindTest",
        description = "The same bag under the same weight, emptied through a known cloth and through this one;"
                + " referenceClothId or reference")
record WindBody(
        @Schema(description = "the known cloth, from the catalogue", example = "linen-plain-185")
        @Nullable
        @Size(max = 100)
        String referenceClothId,

        @Schema(description = "air permeability of another known cloth, mm/s at 100 Pa") @Nullable @Valid
        FigureBody reference,

        @Schema(description = "what the known cloth is called") @Nullable @Size(max = 200)
        String referenceName,

        @Schema(description = "s through the known cloth") @NotEmpty @Size(max = WindTest.MOST_TIMES)
        List<@NotNull Double> referenceSeconds,

        @Schema(description = "s through this cloth") @NotEmpty @Size(max = WindTest.MOST_TIMES)
        List<@NotNull Double> seconds,

        @Schema(description = "mass of the weight", example = "500") @NotNull
        Double massG,

        @Schema(description = "area on which it presses the bag", example = "400") @NotNull
        Double areaCm2) {

    /** Finds a cloth of the catalogue. */
    @FunctionalInterface
    interface Known {
        WindReference byId(String id);
    }

    WindTest test(Known known) {
        WindReference beside = beside(known);
        return new WindTest(beside.name(), beside.airPermeabilityMmS(), referenceSeconds, seconds, massG, areaCm2);
    }

    private WindReference beside(Known known) {
        String id = referenceClothId;
        FigureBody stated = reference;
        if (id != null && stated == null) {
            return known.byId(id);
        }
        if (id == null && stated != null) {
            String name = referenceName == null ? "" : referenceName;
            return Refused.within("reference", () -> WindReference.told(name, stated.figure()));
        }
        throw Refused.of(
                "reference",
                id == null ? "is missing" : "stands beside referenceClothId",
                "give referenceClothId of a known cloth, or its air permeability as reference");
    }

    static WindBody of(WindTest told) {
        return new WindBody(
                null,
                FigureBody.of(told.reference(), Property.AIR_PERMEABILITY_MM_S.unit()),
                told.referenceName(),
                told.referenceSeconds(),
                told.seconds(),
                told.massG(),
                told.areaCm2());
    }
}
