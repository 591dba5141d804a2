package campcloth.rest;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The outfit that a request tells of, its cloths from the catalogue or as handed in. */
@Component
class Outfits {

    private final Cloths cloths;
    private final Fibres fibres;

    Outfits(Cloths cloths, Fibres fibres) {
        this.cloths = cloths;
        this.fibres = fibres;
    }

    /** @param field where the list stands in the request */
    Outfit of(String field, @Nullable List<OutfitBody> told) {
        if (told == null || told.isEmpty()) {
            return Outfit.UNTOLD;
        }
        Map<String, KeptCloth> kept = kept(told);
        List<OutfitPart> parts = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            OutfitBody body = told.get(i);
            parts.add(Refused.within(field + "[" + i + "]", () -> part(body, kept)));
        }
        return new Outfit(parts);
    }

    private Map<String, KeptCloth> kept(List<OutfitBody> told) {
        List<String> ids = told.stream()
                .map(OutfitBody::clothId)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        return ids.isEmpty()
                ? Map.of()
                : cloths.byIds(ids).stream().collect(Collectors.toMap(KeptCloth::id, Function.identity()));
    }

    private OutfitPart part(OutfitBody body, Map<String, KeptCloth> kept) {
        return new OutfitPart(
                body.kind(),
                cloth(body, kept),
                Optional.ofNullable(body.insulationClo()),
                body.spells() == null ? Set.of() : Set.copyOf(body.spells()));
    }

    private Optional<Cloth> cloth(OutfitBody body, Map<String, KeptCloth> kept) {
        String id = body.clothId();
        ClothBody inline = body.cloth();
        if (id != null && inline != null) {
            throw Refused.of("cloth", "stands beside clothId", "give either cloth or clothId, or neither");
        }
        if (inline != null) {
            return Optional.of(Refused.within("cloth", () -> inline.cloth(fibres)));
        }
        if (id == null) {
            return Optional.empty();
        }
        return Optional.of(Optional.ofNullable(kept.get(id))
                .orElseThrow(() -> Refused.of("clothId", "is not in the catalogue", "take an id from GET /api/cloths"))
                .cloth());
    }
}
