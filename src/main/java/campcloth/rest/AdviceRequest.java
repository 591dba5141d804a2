package campcloth.rest;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which cloth for this garment at this event? */
record AdviceRequest(
        @Schema(description = "the event itself, or eventId in its place") @Nullable @Valid
        EventBody event,

        @Schema(description = "id of an event on file") @Nullable
        String eventId,

        @NotNull @Valid GarmentBody garment,

        @Schema(description = "which cloths to judge; the whole catalogue where it is left out or empty")
        @Nullable
        @Valid
        ClothChoice cloths,

        @Schema(description = "how many cloths to answer with; 20 where it is left out")
        @Nullable
        @Min(value = 1, message = "give a number from 1 to 500")
        @Max(value = 500, message = "give a number from 1 to 500")
        Integer limit) {

    static final int USUAL_LIMIT = 20;

    /** Cloths by id, by search, or handed in unsaved; several of these add up. */
    record ClothChoice(
            @Nullable @Size(max = 500) List<@NotNull String> ids,
            @Nullable @Valid Filter filter,
            @Nullable @Size(max = 100) List<@NotNull @Valid ClothBody> inline) {

        boolean isEmpty() {
            return (ids == null || ids.isEmpty()) && filter == null && (inline == null || inline.isEmpty());
        }
    }

    /** A search in the catalogue. */
    @Schema(name = "ClothFilter")
    record Filter(
            @Nullable @Size(max = 200) String text,
            @Nullable String fibre,
            @Nullable Double minWeightGsm,
            @Nullable Double maxWeightGsm) {}

    int answers() {
        return limit == null ? USUAL_LIMIT : limit;
    }
}
