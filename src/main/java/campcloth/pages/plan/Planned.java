package campcloth.pages.plan;

import campcloth.advice.Candidate;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Outfit;
import campcloth.errand.Asked;
import campcloth.errand.TakenEvent;
import campcloth.event.Events;
import campcloth.event.Seasons;
import campcloth.figure.Refused;
import campcloth.garment.Sizes;
import campcloth.pages.NotHere;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** Turns what a form asks into the question that the core answers. */
@Component
class Planned {

    private static final int LEAST = 2;
    private static final int MOST = 6;

    private final Events events;
    private final Seasons seasons;
    private final Sizes sizes;
    private final Cloths cloths;
    private final WornLayers worn;

    Planned(Events events, Seasons seasons, Sizes sizes, Cloths cloths, WornLayers worn) {
        this.events = events;
        this.seasons = seasons;
        this.sizes = sizes;
        this.cloths = cloths;
        this.worn = worn;
    }

    /** A question with the event it is about. */
    record Question(TakenEvent event, Asked asked) {}

    Question question(AskedForm form, Supplier<List<Candidate>> candidates) {
        if (form.use().boundary().isPresent()) {
            throw Refused.of("use", "is outside what is advised on", "see the form for whom to ask");
        }
        TakenEvent event = form.event(events, seasons);
        Outfit outfit = worn.of(form, event.event());
        return new Question(event, form.asking(event.event(), sizes, outfit).about(candidates));
    }

    Candidate cloth(String id) {
        return cloths.byId(id).map(Planned::candidate).orElseThrow(() -> new NotHere("cloth"));
    }

    /** The cloths ticked, in the order they were, each once. */
    List<Candidate> ticked(List<String> ids) {
        List<String> asked = ids.stream().distinct().toList();
        if (asked.size() < LEAST || asked.size() > MOST) {
            throw Refused.of(
                    "cloth",
                    "is ticked " + asked.size() + " times",
                    "tick " + LEAST + " to " + MOST + " cloths to compare");
        }
        Map<String, Candidate> found = new LinkedHashMap<>();
        cloths.byIds(asked).forEach(kept -> found.put(kept.id(), candidate(kept)));
        return asked.stream()
                .map(id -> {
                    Candidate candidate = found.get(id);
                    if (candidate == null) {
                        throw new NotHere("cloth");
                    }
                    return candidate;
                })
                .toList();
    }

    static Candidate candidate(KeptCloth kept) {
        return new Candidate(kept.id(), kept.cloth());
    }
}
