package campcloth.rest;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Finish;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.ToldFigure;
import campcloth.cloth.Weave;
import campcloth.fibre.Fibres;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A cloth as it is sent and served. Figures may be given bare ({@code "weightGsm": 190}), and then count as declared, or
 * whole in {@code figures}. What is served can be sent back changed.
 */
@Schema(
        name = "Cloth",
        description = "A cloth. Give figures bare (then DECLARED) or whole in `figures`; what is missing is estimated.")
record ClothBody(
        @Schema(accessMode = Schema.AccessMode.READ_ONLY) @Nullable
        String id,

        @Schema(example = "Unbleached linen, plain") @NotNull @Size(min = 1, max = 200)
        String name,

        @NotEmpty @Size(max = 20) List<@NotNull @Valid ShareBody> blend,

        @Schema(description = "PLAIN where it is left out") @Nullable
        Weave weave,

        @Schema(
                description =
                        "PLAIN where it is left out, RAISED where fibres and weave are not known either; pile, fleece and fur are always raised")
        @Nullable
        Surface surface,

        @Schema(description = "NONE where it is left out") @Nullable
        Finish finish,

        @Schema(description = "whether pieces must all lie the same way") @Nullable
        Boolean nap,

        @Nullable Boolean stretch,
        @Schema(example = "190") @Nullable Double weightGsm,
        @Schema(example = "145") @Nullable Double widthCm,
        @Schema(example = "0.45") @Nullable Double thicknessMm,
        @Schema(example = "400") @Nullable Double airPermeabilityMmS,
        @Schema(example = "2.5") @Nullable Double vapourResistanceM2PaW,
        @Schema(example = "6") @Nullable Double shrinkWarpPercent,
        @Schema(example = "4") @Nullable Double shrinkWeftPercent,
        @Nullable Double fibreDiameterUm,
        @Nullable Double fibreDiameterCvPercent,
        @Nullable Double pricePerMetre,

        @Schema(description = "figures with interval, basis and source, by field name") @Nullable @Size(max = 20)
        Map<String, @NotNull @Valid FigureBody> figures,

        @Schema(accessMode = Schema.AccessMode.READ_ONLY, description = "computed where nothing better is known")
        @Nullable
        Map<String, FigureBody> estimates,

        @Nullable @Size(max = 2000) String note,

        @Schema(
                description =
                        "treatment against flame, as somebody said; NONE where it is left out. Only what its maker"
                                + " declares to last counts at all, and little")
        @Nullable
        FlameTreatment flameTreatment,

        @Schema(accessMode = Schema.AccessMode.READ_ONLY) KeptCloth.@Nullable Origin origin) {

    static ClothBody of(KeptCloth kept) {
        return of(kept.id(), kept.cloth(), kept.origin());
    }

    /** One as it was when something was made of it. */
    static ClothBody of(String id, Cloth cloth) {
        return of(id, cloth, null);
    }

    private static ClothBody of(String id, Cloth cloth, KeptCloth.@Nullable Origin origin) {
        Map<String, FigureBody> known = new LinkedHashMap<>();
        Map<String, FigureBody> estimated = new LinkedHashMap<>();
        Estimates.complete(cloth).figures().forEach((property, figure) -> {
            Map<String, FigureBody> group = cloth.figures().containsKey(property) ? known : estimated;
            group.put(property.field(), FigureBody.of(figure, property.unit()));
        });
        return new ClothBody(
                id,
                cloth.name(),
                ShareBody.of(cloth.blend()),
                cloth.weave(),
                cloth.surface(),
                cloth.finish(),
                cloth.nap(),
                cloth.stretch(),
                bare(cloth, Property.WEIGHT_GSM),
                bare(cloth, Property.WIDTH_CM),
                bare(cloth, Property.THICKNESS_MM),
                bare(cloth, Property.AIR_PERMEABILITY_MM_S),
                bare(cloth, Property.VAPOUR_RESISTANCE_M2PA_W),
                bare(cloth, Property.SHRINK_WARP_PERCENT),
                bare(cloth, Property.SHRINK_WEFT_PERCENT),
                bare(cloth, Property.FIBRE_DIAMETER_UM),
                bare(cloth, Property.FIBRE_DIAMETER_CV_PERCENT),
                bare(cloth, Property.PRICE_PER_METRE),
                known,
                estimated,
                cloth.note(),
                cloth.flameTreatment(),
                origin);
    }

    /** The cloth meant; refuses figures out of range, unknown fibres and figures of no property. */
    Cloth cloth(Fibres fibres) {
        return cloth(fibres, Map.of());
    }

    /** The cloth meant in place of another, of which what was served may have been sent back changed. */
    Cloth replacing(KeptCloth before, Fibres fibres) {
        if (id != null && !id.equals(before.id())) {
            throw Refused.of("id", "is not the id in the address", "leave it out, or send to its own address");
        }
        return cloth(fibres, before.cloth().figures());
    }

    private Cloth cloth(Fibres fibres, Map<Property, Figure> before) {
        return new Described(weave, surface, finish, nap, stretch)
                .cloth(name, ShareBody.blend(blend, fibres), known(before), note == null ? "" : note)
                .with(Objects.requireNonNullElse(flameTreatment, FlameTreatment.NONE));
    }

    private Map<Property, Figure> known(Map<Property, Figure> before) {
        Map<String, FigureBody> whole = figures == null ? Map.of() : figures;
        for (String field : whole.keySet()) {
            if (Arrays.stream(Property.values()).noneMatch(p -> p.field().equals(field))) {
                throw Refused.of(
                        "figures." + field,
                        "is no figure of a cloth",
                        "use "
                                + Arrays.stream(Property.values())
                                        .map(Property::field)
                                        .toList());
            }
        }
        Map<Property, Figure> known = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            Optional<Figure> stated = Optional.ofNullable(whole.get(property.field()))
                    .map(body -> Refused.within("figures." + property.field(), body::figure));
            new ToldFigure(property, Optional.ofNullable(bare(property)), stated)
                    .figure(Optional.ofNullable(before.get(property)))
                    .ifPresent(figure -> known.put(property, figure));
        }
        return known;
    }

    private @Nullable Double bare(Property property) {
        return switch (property) {
            case WEIGHT_GSM -> weightGsm;
            case WIDTH_CM -> widthCm;
            case THICKNESS_MM -> thicknessMm;
            case AIR_PERMEABILITY_MM_S -> airPermeabilityMmS;
            case VAPOUR_RESISTANCE_M2PA_W -> vapourResistanceM2PaW;
            case SHRINK_WARP_PERCENT -> shrinkWarpPercent;
            case SHRINK_WEFT_PERCENT -> shrinkWeftPercent;
            case FIBRE_DIAMETER_UM -> fibreDiameterUm;
            case FIBRE_DIAMETER_CV_PERCENT -> fibreDiameterCvPercent;
            case PRICE_PER_METRE -> pricePerMetre;
        };
    }

    private static @Nullable Double bare(Cloth cloth, Property property) {
        return cloth.figure(property).map(Figure::value).orElse(null);
    }
}
