package campcloth.rest;

import campcloth.cloth.MarkPair;
import campcloth.cloth.WashedMarks;
import campcloth.cloth.Washing;
import campcloth.figure.Refused;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Marks on a piece before and after washing. */
@Schema(name = "WashedMarks", description = "Marks on a piece before and after washing")
record WashedMarksBody(
        @Schema(description = "pairs of marks along the cloth") @Nullable @Size(max = WashedMarks.MOST_PAIRS)
        List<@NotNull @Valid MarkPairBody> warp,

        @Schema(description = "pairs of marks across the cloth") @Nullable @Size(max = WashedMarks.MOST_PAIRS)
        List<@NotNull @Valid MarkPairBody> weft,

        @Schema(description = "length of the piece, along the warp", example = "60") @Nullable
        Double specimenLengthCm,

        @Schema(example = "60") @Nullable Double specimenWidthCm,

        @Schema(description = "smallest step of the ruler, mm; 1 where it is left out", example = "1") @Nullable
        Double rulerStepMm,

        @Nullable @Valid WashingBody washing) {

    /** Two marks. */
    @Schema(name = "MarkPair", description = "How far two marks lie apart")
    record MarkPairBody(
            @Schema(example = "50") @NotNull Double beforeCm,

            @Schema(description = "after each wash in turn; the last one makes the figure")
            @NotEmpty
            @Size(max = MarkPair.MOST_WASHES)
            List<@NotNull Double> afterCm) {

        MarkPair pair() {
            return new MarkPair(beforeCm, afterCm);
        }

        static MarkPairBody of(MarkPair told) {
            return new MarkPairBody(told.beforeCm(), told.afterCm());
        }
    }

    /** How it was washed. */
    @Schema(name = "Washing", description = "How it was washed and dried; drying as ISO 6330 lists it, A to F")
    record WashingBody(
            @Schema(example = "40") @Nullable Double temperatureC,
            Washing.@Nullable Method method,
            Washing.@Nullable Drying drying) {

        static WashingBody of(Washing told) {
            return new WashingBody(
                    told.temperatureC().orElse(null),
                    told.method().orElse(null),
                    told.drying().orElse(null));
        }
    }

    WashedMarks marks() {
        return new WashedMarks(
                SwatchBody.each("warp", warp == null ? List.of() : warp, MarkPairBody::pair),
                SwatchBody.each("weft", weft == null ? List.of() : weft, MarkPairBody::pair),
                Optional.ofNullable(specimenLengthCm),
                Optional.ofNullable(specimenWidthCm),
                SwatchBody.ruler(rulerStepMm),
                washed());
    }

    private Washing washed() {
        return washing == null
                ? new Washing(Optional.empty(), Optional.empty(), Optional.empty())
                : Refused.within(
                        "washing",
                        () -> new Washing(
                                Optional.ofNullable(washing.temperatureC()),
                                Optional.ofNullable(washing.method()),
                                Optional.ofNullable(washing.drying())));
    }

    static WashedMarksBody of(WashedMarks told) {
        return new WashedMarksBody(
                told.warp().stream().map(MarkPairBody::of).toList(),
                told.weft().stream().map(MarkPairBody::of).toList(),
                told.specimenLengthCm().orElse(null),
                told.specimenWidthCm().orElse(null),
                told.rulerStepMm(),
                WashingBody.of(told.washing()));
    }
}
