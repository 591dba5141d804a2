package campcloth.rest;

import campcloth.advice.Candidate;
import campcloth.advice.FireSideBySide;
import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.Fit;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Layer;
import campcloth.cloth.SideBySide;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import campcloth.fire.Exposure;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which cloths to set side by side: of the catalogue, unsaved ones, or both; 2 to 12 in all. */
record SideBySideRequest(
        @Schema(description = "ids of cloths in the catalogue, each once") @Nullable @Size(max = SideBySide.MOST)
        List<@NotNull String> ids,

        @Schema(description = "cloths that are not kept; they stand behind those of the catalogue")
        @Nullable
        @Size(max = SideBySide.MOST)
        List<@NotNull @Valid ClothBody> cloths,

        @Schema(description = "the fire to grade them at; no grade where it is left out") @Nullable @Valid
        AtTheFire fire) {

    /** A fire, the wearer's place at it, and how the cloths are worn there. */
    @Schema(name = "ComparedAtTheFire")
    record AtTheFire(
            @Schema(description = "what the wearer does at the fire") @NotNull
            FireRole role,

            @Schema(example = "2.0", description = "from the fire's centre; presumed near for the role where left out")
            @Nullable
            Double distanceM,

            @Schema(
                    example = "100",
                    description = "heat that the fire gives off; that of its kind where it is left out")
            @Nullable
            Double fireKw,

            @Nullable FireKind kind,

            @Schema(description = "LOOSE where it is left out, the worse case") @Nullable
            Fit fit,

            @Schema(description = "where they lie; SKIN where it is left out, the worse case") @Nullable
            Layer layer) {

        FireSideBySide of(List<Cloth> completed) {
            Exposure exposure = Refused.within(
                    "fire",
                    () -> new Exposure(
                            role,
                            Optional.ofNullable(distanceM),
                            Optional.ofNullable(fireKw),
                            Optional.ofNullable(kind)));
            return FireSideBySide.of(
                    completed,
                    exposure,
                    Objects.requireNonNullElse(fit, Fit.LOOSE),
                    Objects.requireNonNullElse(layer, Layer.SKIN));
        }
    }

    /** The cloths meant, in the order asked; refuses by its place what is not there or cannot be. */
    List<Candidate> cloths(Cloths known, Fibres fibres) {
        List<Candidate> asked = new ArrayList<>();
        List<String> chosen = ids == null ? List.of() : ids;
        for (int i = 0; i < chosen.size(); i++) {
            String id = chosen.get(i);
            String field = "ids[" + i + "]";
            if (chosen.indexOf(id) < i) {
                throw Refused.of(field, "stands twice", "name each cloth once");
            }
            KeptCloth kept = known.byId(id)
                    .orElseThrow(() -> Refused.of(field, "is not in the catalogue", "take an id from GET /api/cloths"));
            asked.add(new Candidate(id, kept.cloth()));
        }
        List<ClothBody> inline = cloths == null ? List.of() : cloths;
        for (int i = 0; i < inline.size(); i++) {
            ClothBody body = inline.get(i);
            String name = "inline-" + (i + 1);
            asked.add(Refused.within("cloths[" + i + "]", () -> new Candidate(name, body.cloth(fibres))));
        }
        return asked;
    }
}
