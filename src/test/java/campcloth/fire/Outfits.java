package campcloth.fire;

import campcloth.cloth.Cloth;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Property;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Outfits for the tests of this room, drawn or told. */
final class Outfits {

    private Outfits() {}

    static Cloth cloth(WornCloth worn) {
        return new Cloth(
                        "cloth",
                        worn.blend(),
                        worn.weave(),
                        worn.surface(),
                        worn.finish(),
                        false,
                        false,
                        Map.of(
                                Property.WEIGHT_GSM,
                                new Figure(
                                        worn.weightGsm(), worn.weightGsm(), worn.weightGsm(), Basis.MEASURED, "test")),
                        "")
                .with(worn.treatment());
    }

    static OutfitPart part(Kind kind, WornCloth cloth) {
        return new OutfitPart(kind, Optional.of(cloth(cloth)), Optional.empty());
    }

    static OutfitPart part(Kind kind, String blend, double weightGsm) {
        return part(kind, FireFixtures.plain(blend, weightGsm));
    }

    static OutfitPart untold(Kind kind) {
        return new OutfitPart(kind, Optional.empty(), Optional.empty());
    }

    static Outfit of(OutfitPart... parts) {
        return new Outfit(Arrays.asList(parts));
    }

    static Outfit with(Outfit outfit, OutfitPart part) {
        List<OutfitPart> more = new ArrayList<>(outfit.parts());
        more.add(part);
        return new Outfit(more);
    }

    static Kind kind(Draw draw) {
        return draw.one(List.of(Kind.values()));
    }

    static OutfitPart part(Draw draw) {
        return draw.one(List.of(true, false, false, false)) ? untold(kind(draw)) : part(kind(draw), draw.cloth());
    }

    static Outfit outfit(Draw draw) {
        List<OutfitPart> parts = new ArrayList<>();
        while (parts.size() < 4 && draw.coin()) {
            parts.add(part(draw));
        }
        return new Outfit(parts);
    }

    static OutfitHazard grade(WornCloth garment, Outfit outfit, Exposure exposure) {
        return OutfitGrading.grade(garment, outfit, exposure, FireFixtures.FIBRES);
    }
}
