package campcloth.rest;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.Judged;
import campcloth.advice.Question;
import campcloth.advice.Ranking;
import campcloth.cloth.Wear;
import campcloth.comfort.Surroundings;
import campcloth.comfort.Wardrobe;
import campcloth.event.Event;
import campcloth.figure.Refused;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Ranks cloths for an event and a garment. */
@RestController
@Tag(name = "Advice", description = "Which cloth? Ranked with reasons, melt warnings and rules")
class AdviceController {

    private final Adviser adviser;
    private final Candidates candidates;
    private final AskedEvents events;

    AdviceController(Adviser adviser, Candidates candidates, AskedEvents events) {
        this.adviser = adviser;
        this.candidates = candidates;
        this.events = events;
    }

    @PostMapping("/api/advice")
    @Operation(
            operationId = "rankCloths",
            summary = "Ranks cloths for a garment at an event",
            description =
                    "The verdict comes before the score: rules and fire gate, and the score only orders what passed.")
    AdviceAnswer advise(@Valid @RequestBody AdviceRequest request) {
        Event event = events.of(request.event(), request.eventId());
        GarmentBody garment = request.garment();
        Design design = Refused.within("garment", () -> Designs.named(garment.design()));
        Wear wear = worn(garment, event);
        Wear wearAtFire = wear(design, garment, garment.touchesSkin().orElse(true));
        Question question = new Question(event, wear, wearAtFire, candidates.of(request.cloths()));
        Ranking ranking = adviser.rank(question);
        List<Candidate> page = ranking.judged().stream()
                .limit(request.answers())
                .map(Judged::candidate)
                .toList();
        return AdviceAnswer.of(
                ranking,
                presumed(garment, design, event, ranking),
                request.answers(),
                page.isEmpty() ? Map.of() : adviser.courses(question, page));
    }

    /** How the garment is worn there: on the skin where nobody said, but over a shirt in the cold. */
    static Wear worn(GarmentBody garment, Event event) {
        Design design = Refused.within("garment", () -> Designs.named(garment.design()));
        return wear(design, garment, garment.touchesSkin().orElse(!isCold(event)));
    }

    private static Wear wear(Design design, GarmentBody garment, boolean onSkin) {
        return Refused.within("garment", () -> design.wear(onSkin, garment.measurements()));
    }

    /** Whether people wear more than one layer: where warm underwear is presumed, too. */
    private static boolean isCold(Event event) {
        return event.spells().stream().anyMatch(spell -> spell.airC() <= Wardrobe.COLD_C);
    }

    private static List<String> presumed(GarmentBody garment, Design design, Event event, Ranking ranking) {
        List<String> presumed = new ArrayList<>();
        if (event.spellsPresumed()) {
            presumed.add("No spells were given: those usual for "
                    + event.season().name().toLowerCase(Locale.ROOT)
                    + " here were taken, not a forecast. Give the real weather when it is known.");
        }
        if (garment.touchesSkin().isEmpty()) {
            presumed.add(
                    isCold(event)
                            ? "Nobody said whether it touches the skin: in such cold it was presumed over a shirt, at the fire"
                                    + " it was judged as if it touches the skin."
                            : "Nobody said whether it touches the skin: it was judged as if it does.");
        }
        presumed.addAll(Surroundings.presumed(event.spells(), event.place()));
        presumed.addAll(design.assumptions(garment.measurements()));
        presumed.add(AdviceAnswer.wornBesides(ranking.wardrobe()));
        return presumed;
    }
}
