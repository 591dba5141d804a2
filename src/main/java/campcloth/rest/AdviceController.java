package campcloth.rest;

import campcloth.advice.Adviser;
import campcloth.advice.Question;
import campcloth.advice.Ranking;
import campcloth.cloth.Outfit;
import campcloth.cloth.Wear;
import campcloth.comfort.Wardrobe;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Ranks cloths for an event and a garment. */
@RestController
@Tag(name = "Advice", description = "Which cloth? Ranked with reasons, melt warnings and rules")
class AdviceController {

    private final Adviser adviser;
    private final Candidates candidates;
    private final Outfits outfits;
    private final Events events;
    private final Seasons seasons;
    private final Fibres fibres;

    AdviceController(
            Adviser adviser, Candidates candidates, Outfits outfits, Events events, Seasons seasons, Fibres fibres) {
        this.adviser = adviser;
        this.candidates = candidates;
        this.outfits = outfits;
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
        GarmentBody garment = request.garment();
        Design design = Refused.within("garment", () -> Designs.named(garment.design()));
        Wear wear = wear(design, garment, garment.touchesSkin().orElse(!isCold(event)));
        Wear wearAtFire = wear(design, garment, garment.touchesSkin().orElse(true));
        Outfit outfit = outfits.of("garment.outfit", garment.outfit());
        Ranking ranking = adviser.rank(new Question(event, wear, wearAtFire, outfit, candidates.of(request.cloths())));
        return AdviceAnswer.of(ranking, presumed(garment, design, event, ranking), request.answers());
    }

    private static Wear wear(Design design, GarmentBody garment, boolean onSkin) {
        return Refused.within("garment", () -> design.wear(onSkin, garment.measurements()));
    }

    /** Whether people wear more than one layer: where warm underwear is presumed, too. */
    private static boolean isCold(Event event) {
        return event.spells().stream().anyMatch(spell -> spell.airC() <= Wardrobe.COLD_C);
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
        presumed.addAll(design.assumptions(garment.measurements()));
        presumed.add(AdviceAnswer.wornBesides(ranking.wardrobe()));
        return presumed;
    }
}
