package campcloth.rest;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/** How does this event go in a garment of this cloth? */
record CourseRequest(
        @Schema(description = "the event itself, or eventId in its place") @Nullable @Valid
        EventBody event,

        @Schema(description = "id of an event on file") @Nullable
        String eventId,

        @NotNull @Valid GarmentBody garment,

        @Schema(description = "the cloth itself, or clothId in its place") @Nullable @Valid
        ClothBody cloth,

        @Schema(description = "id of a cloth in the catalogue") @Nullable
        String clothId) {}
