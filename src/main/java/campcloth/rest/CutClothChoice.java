package campcloth.rest;

import campcloth.rest.CuttingPlanRequest.CutCloth;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import org.jspecify.annotations.Nullable;

/** A cloth to cut from: as stated, or of the catalogue. */
@Schema(name = "ClothToCutChoice")
record CutClothChoice(
        @Schema(description = "the cloth, or clothId in its place") @Nullable @Valid
        CutCloth cloth,

        @Schema(description = "id of a cloth in the catalogue") @Nullable
        String clothId,

        @Schema(description = "with clothId: whether it is washed before cutting; true where it is left out") @Nullable
        Boolean prewash,

        @Schema(description = "with clothId: width of each selvedge; 1 where it is left out") @Nullable
        Double selvedgeCm) {}
