package campcloth.rest;

import campcloth.cloth.Layer;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.fire.WornPart;
import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Which part of an outfit, and how it was taken. */
@Schema(name = "OutfitPartName")
record PartName(
        String name,

        @Schema(description = "null for the garment's own cloth") @Nullable
        Kind kind,

        @Schema(description = "name of its cloth; null for the garment's own and where nobody said") @Nullable
        String cloth,

        @Schema(description = "whether somebody said what it is made of; if not, the worst was taken")
        boolean told,

        @Schema(description = "where it lies") Layer layer) {

    static PartName of(WornPart part) {
        return new PartName(
                part.name(),
                part.part().map(OutfitPart::kind).orElse(null),
                part.part().flatMap(OutfitPart::cloth).map(c -> c.name()).orElse(null),
                part.isTold(),
                part.worn().layer());
    }
}
