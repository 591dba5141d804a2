package campcloth.rest;

import campcloth.advice.Candidate;
import campcloth.errand.Asked;
import campcloth.errand.Asking;
import campcloth.figure.Refused;
import campcloth.garment.Design;
import campcloth.garment.Measurements;
import campcloth.garment.Sizes;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Turns an event and a garment as a request tells them into the question that the core answers. */
@Component
class Questions {

    private final AskedEvents events;
    private final Outfits outfits;
    private final Sizes sizes;

    Questions(AskedEvents events, Outfits outfits, Sizes sizes) {
        this.events = events;
        this.outfits = outfits;
        this.sizes = sizes;
    }

    /** A question with the version of its event, where that is one on file. */
    record Told(Asked asked, Optional<Long> eventVersion) {}

    /** Refuses a use that is outside what we advise on, and whatever of event and garment cannot be used. */
    Told of(@Nullable EventBody told, @Nullable String id, GarmentBody garment, Supplier<List<Candidate>> candidates) {
        Outside.mustBeOrdinary("garment.use", garment.use());
        AskedEvents.Asked event = events.of(told, id);
        Design design = Asking.design(garment.design());
        Measurements wearer = Refused.within("garment", () -> garment.measurements(sizes));
        Asking asking = new Asking(
                event.event(), design, wearer, garment.touchesSkin(), outfits.of("garment.outfit", garment.outfit()));
        return new Told(asking.about(candidates), event.version());
    }
}
