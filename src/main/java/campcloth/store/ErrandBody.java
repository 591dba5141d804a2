package campcloth.store;

import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.errand.ChosenCloth;
import campcloth.errand.Errand;
import campcloth.errand.OtherWearer;
import campcloth.errand.TakenEvent;
import campcloth.errand.WantedGarment;
import campcloth.event.Event;
import campcloth.fibre.Fibres;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An errand as it is kept in the column {@code body}: names here are what stands in people's databases and must stay readable. What
 * a row lacks is null, and reads as not told.
 */
record ErrandBody(
        String title,
        Event event,
        @Nullable String eventId,
        @Nullable Long eventVersion,
        String design,
        @Nullable Map<String, Double> wearerCm,
        @Nullable String size,
        @Nullable Boolean touchesSkin,
        @Nullable Integer count,
        @Nullable Map<String, Object> options,
        @Nullable List<PartOf> outfit,
        @Nullable String wearerName,
        @Nullable List<WearerOf> others,
        String clothId,
        ClothBody cloth,
        String planId,
        Instant createdAt) {

    /** A part of the outfit. */
    record PartOf(
            OutfitPart.Kind kind,
            @Nullable ClothBody cloth,
            @Nullable Double insulationClo,
            @Nullable List<String> spells) {

        static PartOf of(OutfitPart part) {
            return new PartOf(
                    part.kind(),
                    part.cloth().map(ClothBody::of).orElse(null),
                    part.insulationClo().orElse(null),
                    part.spells().stream().sorted().toList());
        }

        OutfitPart part(Fibres fibres) {
            return new OutfitPart(
                    kind,
                    Optional.ofNullable(cloth).map(body -> body.cloth(fibres)),
                    Optional.ofNullable(insulationClo),
                    spells == null ? Set.of() : Set.copyOf(spells));
        }
    }

    /** Somebody else for whom it is cut. */
    record WearerOf(
            @Nullable String name,
            @Nullable Map<String, Double> wearerCm,
            @Nullable String size,
            @Nullable Integer count) {

        static WearerOf of(OtherWearer other) {
            return new WearerOf(other.name(), other.wearerCm(), other.size().orElse(null), other.count());
        }

        OtherWearer wearer() {
            return new OtherWearer(
                    name == null ? "" : name,
                    wearerCm == null ? Map.of() : wearerCm,
                    Optional.ofNullable(size),
                    count == null ? 1 : count);
        }
    }

    static ErrandBody of(Errand errand) {
        WantedGarment garment = errand.garment();
        Optional<TakenEvent.OnFile> onFile = errand.event().onFile();
        return new ErrandBody(
                errand.title(),
                errand.event().event(),
                onFile.map(TakenEvent.OnFile::id).orElse(null),
                onFile.map(TakenEvent.OnFile::version).orElse(null),
                garment.design(),
                garment.wearerCm(),
                garment.size().orElse(null),
                garment.touchesSkin().orElse(null),
                garment.count(),
                garment.options(),
                garment.outfit().parts().stream().map(PartOf::of).toList(),
                garment.wearerName(),
                garment.others().stream().map(WearerOf::of).toList(),
                errand.cloth().id(),
                ClothBody.of(errand.cloth().cloth()),
                errand.planId(),
                errand.createdAt());
    }

    Errand errand(Fibres fibres) {
        Optional<TakenEvent.OnFile> onFile = eventId == null || eventVersion == null
                ? Optional.empty()
                : Optional.of(new TakenEvent.OnFile(eventId, eventVersion));
        WantedGarment garment = new WantedGarment(
                design,
                wearerCm == null ? Map.of() : wearerCm,
                Optional.ofNullable(size),
                Optional.ofNullable(touchesSkin),
                count == null ? 1 : count,
                options == null ? Map.of() : options,
                new Outfit(
                        outfit == null
                                ? List.of()
                                : outfit.stream().map(part -> part.part(fibres)).toList()),
                wearerName == null ? "" : wearerName,
                others == null
                        ? List.of()
                        : others.stream().map(WearerOf::wearer).toList());
        return new Errand(
                title,
                new TakenEvent(event, onFile),
                garment,
                new ChosenCloth(clothId, cloth.cloth(fibres)),
                planId,
                createdAt);
    }
}
