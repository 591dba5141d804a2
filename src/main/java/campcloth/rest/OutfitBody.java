package campcloth.rest;

import campcloth.cloth.OutfitPart.Kind;
import campcloth.event.Event;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One part of an outfit as it is sent: what it is, and of what cloth where somebody knows. */
@Schema(
        name = "OutfitPart",
        description =
                "Something worn with the garment or sewn into it. Without clothId and cloth its cloth is not known.")
record OutfitBody(
        @Schema(
                example = "SHIRT",
                description = "what it is; lining, wadding, interlining, trim and thread are sewn in")
        @NotNull
        Kind kind,

        @Schema(description = "id of a cloth in the catalogue") @Nullable
        String clothId,

        @Schema(description = "the cloth itself, in place of clothId") @Nullable @Valid
        ClothBody cloth,

        @Schema(example = "0.25", description = "its insulation, clo; for what is worn by itself") @Nullable
        Double insulationClo,

        @Schema(
                example = "[\"fireside\"]",
                description =
                        "names of the spells through which it is worn, the same as in the event; left out: through all of them. Only for"
                                + " warmth and heat: fire judges it as though it were always worn")
        @Nullable
        @Size(max = Event.MOST_SPELLS)
        List<@NotBlank @Size(max = 100) String> spells) {}
