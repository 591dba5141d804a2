package campcloth.rest;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.fibre.Fibres;
import campcloth.fire.ClothWeight;
import campcloth.fire.ClothingUse;
import campcloth.fire.Exposure;
import campcloth.fire.WornCloth;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One cloth at one fire. What is left out of surface, fit and layer is presumed the worse; weave and finish, which few can name,
 * are presumed plain and none. {@link #presumed} says each of these.
 */
record FireRequest(
        @NotEmpty @Size(max = 20) List<@NotNull @Valid ShareBody> blend,
        @Schema(example = "120") @NotNull Double weightGsm,

        @Schema(description = "whether fibre ends stand out of the face; RAISED where it is left out, the worse case")
        @Nullable
        Surface surface,

        @Schema(description = "LOOSE where it is left out, the worse case") @Nullable
        Fit fit,

        @Schema(description = "where it lies; SKIN where it is left out, the worse case") @Nullable
        Layer layer,

        @Schema(description = "what the wearer does at the fire") @NotNull
        FireRole role,

        @Schema(
                example = "2.0",
                description = "from the fire's centre; presumed as near as the role allows where left out")
        @Nullable
        Double distanceM,

        @Schema(
                example = "100",
                description =
                        "heat that the fire gives off; that of its kind, or of a large fire, 100, where it is left out")
        @Nullable
        Double fireKw,

        @Schema(
                description =
                        "what people call the fire: counted as 20, 50, 100 or 500 kW; where fireKw is given too, that"
                                + " counts and the kind only names the fire")
        @Nullable
        FireKind kind,

        @Schema(description = "PLAIN where it is left out") @Nullable
        Weave weave,

        @Schema(description = "NONE where it is left out; COATED and WAXED count as melting") @Nullable
        Finish finish,

        @Schema(
                description =
                        "ORDINARY where it is left out; the others are outside what we advise on and get no grade, only"
                                + " whom to ask")
        @Nullable
        ClothingUse use,

        @Schema(description = "treatment against flame, as somebody said; NONE where it is left out") @Nullable
        FlameTreatment flameTreatment,

        @Schema(description = "what else is worn or sewn in; graded beside the cloth, in outfit")
        @Nullable
        @Size(max = Outfit.MOST_PARTS)
        List<@NotNull @Valid OutfitBody> outfit) {

    /** The cloth as it is worn; refuses unknown fibres and figures out of range. */
    WornCloth cloth(Fibres fibres) {
        return cloth(fibres, Surface.RAISED);
    }

    BurnTestBody burnTest(Fibres fibres) {
        return BurnTestBody.of(cloth(fibres), cloth(fibres, Surface.PLAIN));
    }

    private WornCloth cloth(Fibres fibres, Surface untold) {
        return new WornCloth(
                ShareBody.blend(blend, fibres),
                new ClothWeight(weightGsm, weightGsm),
                Objects.requireNonNullElse(surface, untold),
                Objects.requireNonNullElse(finish, Finish.NONE),
                Objects.requireNonNullElse(weave, Weave.PLAIN),
                Objects.requireNonNullElse(fit, Fit.LOOSE),
                Objects.requireNonNullElse(layer, Layer.SKIN),
                Objects.requireNonNullElse(flameTreatment, FlameTreatment.NONE));
    }

    Exposure exposure() {
        return new Exposure(
                role, Optional.ofNullable(distanceM), Optional.ofNullable(fireKw), Optional.ofNullable(kind));
    }

    /** What nobody said of the cloth and what was taken for it, in sentences. */
    List<String> presumed() {
        List<String> presumed = new ArrayList<>();
        if (surface == null) {
            presumed.add("Nobody said whether its face is raised: it was judged as raised, the worse case.");
        }
        if (fit == null) {
            presumed.add("Nobody said how it hangs: it was judged as loose, the worse case.");
        }
        if (layer == null) {
            presumed.add("Nobody said in which layer it lies: it was judged as on the skin, the worse case.");
        }
        if (weave == null) {
            presumed.add("No weave was named: plain weave was taken. An open weave lets flame spread faster.");
        }
        if (finish == null) {
            presumed.add("No finish was named: none was taken. A film or wax on the cloth melts and burns.");
        }
        return presumed;
    }
}
