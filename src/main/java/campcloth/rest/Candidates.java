package campcloth.rest;

import campcloth.advice.Candidate;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import campcloth.rest.AdviceRequest.ClothChoice;
import campcloth.rest.AdviceRequest.Filter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The cloths that a request asks to be judged: some by name, and what a search finds. */
@Component
class Candidates {

    private final Cloths cloths;
    private final Fibres fibres;

    Candidates(Cloths cloths, Fibres fibres) {
        this.cloths = cloths;
        this.fibres = fibres;
    }

    /** The search whose cloths are to be judged; empty where none is. */
    Optional<ClothSearch> searched(@Nullable ClothChoice choice) {
        if (choice == null || choice.isEmpty()) {
            return Optional.of(ClothSearch.EVERYTHING);
        }
        return Optional.ofNullable(choice.filter()).map(this::search);
    }

    /** Those that are named by id or handed in; refuses a search that cannot be used, too. */
    List<Candidate> named(@Nullable ClothChoice choice) {
        if (choice == null) {
            return List.of();
        }
        Map<String, Candidate> chosen = new LinkedHashMap<>();
        if (choice.ids() != null) {
            kept(byIds(choice.ids())).forEach(c -> chosen.put(c.id(), c));
        }
        searched(choice);
        List<ClothBody> inline = choice.inline() == null ? List.of() : choice.inline();
        for (int i = 0; i < inline.size(); i++) {
            ClothBody body = inline.get(i);
            String name = "inline-" + (i + 1);
            chosen.put(name, Refused.within("cloths.inline[" + i + "]", () -> new Candidate(name, body.cloth(fibres))));
        }
        return List.copyOf(chosen.values());
    }

    private List<KeptCloth> byIds(List<String> ids) {
        List<KeptCloth> found = cloths.byIds(ids);
        Set<String> known = found.stream().map(KeptCloth::id).collect(Collectors.toSet());
        for (int i = 0; i < ids.size(); i++) {
            if (!known.contains(ids.get(i))) {
                throw Refused.of("cloths.ids[" + i + "]", "is not in the catalogue", "take an id from GET /api/cloths");
            }
        }
        return found;
    }

    private ClothSearch search(Filter filter) {
        return Refused.within(
                "cloths.filter",
                () -> new ClothSearch(
                        Optional.ofNullable(filter.text()).filter(text -> !text.isBlank()),
                        Optional.ofNullable(filter.fibre()).stream()
                                .map(key -> fibres.require(key).key())
                                .collect(Collectors.toSet()),
                        Optional.ofNullable(filter.minWeightGsm()),
                        Optional.ofNullable(filter.maxWeightGsm())));
    }

    private static List<Candidate> kept(List<KeptCloth> kept) {
        return kept.stream().map(k -> new Candidate(k.id(), k.cloth())).toList();
    }
}
