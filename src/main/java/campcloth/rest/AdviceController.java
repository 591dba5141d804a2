package campcloth.rest;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.Question;
import campcloth.advice.Ranking;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Wear;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import campcloth.garment.Designs;
import campcloth.rest.AdviceRequest.ClothChoice;
import campcloth.rest.AdviceRequest.Filter;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Ranks cloths for an event and a garment. */
@RestController
@Tag(name = "Advice", description = "Which cloth? Ranked with reasons, melt warnings and rules")
class AdviceController {

    private final Adviser adviser;
    private final Cloths cloths;
    private final Events events;
    private final Seasons seasons;
    private final Fibres fibres;

    AdviceController(Adviser adviser, Cloths cloths, Events events, Seasons seasons, Fibres fibres) {
        this.adviser = adviser;
        this.cloths = cloths;
        this.events = events;
        this.seasons = seasons;
        this.fibres = fibres;
    }

    @PostMapping("/api/advice")
    @Operation(
            operationId = "rankCloths",
            summary = "Ranks cloths for a garment at an event",
            description =
                    "The verdict comes before the score: rules and fire gate, and the score only orders what passed.")
    AdviceAnswer advise(@Valid @RequestBody AdviceRequest request) {
        Event event = event(request);
        Wear wear = Refused.within(
                "garment",
                () -> Designs.named(request.garment().design())
                        .wear(request.garment().touchesSkin(), request.garment().measurements()));
        Ranking ranking = adviser.rank(new Question(event, wear, candidates(request.cloths())));
        return AdviceAnswer.of(ranking, presumed(request, event, ranking), request.answers());
    }

    private Event event(AdviceRequest request) {
        EventBody inline = request.event();
        String id = request.eventId();
        if ((inline == null) == (id == null)) {
            throw Refused.of(
                    "event",
                    inline == null ? "is missing" : "stands beside eventId",
                    "give either event or eventId; a season alone is enough: {\"season\": \"SUMMER\"}");
        }
        if (inline != null) {
            return Refused.within("event", () -> inline.event(seasons, fibres));
        }
        String wanted = String.valueOf(id);
        return events.byId(wanted)
                .orElseThrow(() -> new Missing("event", wanted))
                .event();
    }

    private List<Candidate> candidates(@org.jspecify.annotations.Nullable ClothChoice choice) {
        if (choice == null || choice.isEmpty()) {
            return kept(cloths.matching(ClothSearch.EVERYTHING));
        }
        Map<String, Candidate> chosen = new LinkedHashMap<>();
        if (choice.ids() != null) {
            kept(byIds(choice.ids())).forEach(c -> chosen.put(c.id(), c));
        }
        if (choice.filter() != null) {
            kept(cloths.matching(search(choice.filter()))).forEach(c -> chosen.put(c.id(), c));
        }
        List<ClothBody> inline = choice.inline() == null ? List.of() : choice.inline();
        for (int i = 0; i < inline.size(); i++) {
            ClothBody body = inline.get(i);
            String name = "inline-" + (i + 1);
            chosen.put(name, Refused.within("cloths.inline[" + i + "]", () -> new Candidate(name, body.cloth(fibres))));
        }
        return List.copyOf(chosen.values());
    }

    private List<KeptCloth> byIds(List<String> ids) {
        List<KeptCloth> found = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            String field = "cloths.ids[" + i + "]";
            found.add(cloths.byId(ids.get(i))
                    .orElseThrow(
                            () -> Refused.of(field, "is not in the catalogue", "take an id from GET /api/cloths")));
        }
        return found;
    }

    private ClothSearch search(Filter filter) {
        Optional<String> fibre = Optional.ofNullable(filter.fibre());
        Refused.within("cloths.filter", () -> fibre.map(fibres::require));
        return new ClothSearch(
                Optional.ofNullable(filter.text()).filter(text -> !text.isBlank()),
                fibre,
                Optional.ofNullable(filter.minWeightGsm()),
                Optional.ofNullable(filter.maxWeightGsm()));
    }

    private static List<Candidate> kept(List<KeptCloth> kept) {
        return kept.stream().map(k -> new Candidate(k.id(), k.cloth())).toList();
    }

    private static List<String> presumed(AdviceRequest request, Event event, Ranking ranking) {
        List<String> presumed = new ArrayList<>();
        if (request.event() != null && request.event().presumesSpells()) {
            presumed.add("No spells were given: those usual for "
                    + event.season().name().toLowerCase(java.util.Locale.ROOT)
                    + " here were taken, not a forecast. Give the real weather when it is known.");
        }
        if (request.garment().nextToSkin() == null) {
            presumed.add("Nobody said whether it touches the skin: it was judged as if it does.");
        }
        presumed.add(AdviceAnswer.wornBesides(ranking.wardrobe()));
        return presumed;
    }
}
