package campcloth.rest;

import campcloth.advice.Candidate;
import campcloth.advice.Question;
import campcloth.cloth.Outfit;
import campcloth.cloth.Wear;
import campcloth.comfort.Surroundings;
import campcloth.comfort.Wardrobe;
import campcloth.event.Event;
import campcloth.event.Spell;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.Measurements;
import campcloth.garment.Sizes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Turns an event and a garment as they are asked about into the question that the core answers. */
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

    /**
     * A question with what it presumes.
     *
     * @param question the question
     * @param eventVersion version of the event, where it is one on file
     * @param presumed what nobody said and what was taken for it, in sentences
     */
    record Asked(Question question, Optional<Long> eventVersion, List<String> presumed) {

        Asked {
            presumed = List.copyOf(presumed);
        }
    }

    /** Refuses a use that is outside what we advise on, and whatever of event and garment cannot be used. */
    Asked of(@Nullable EventBody told, @Nullable String id, GarmentBody garment, Supplier<List<Candidate>> candidates) {
        ClothingUse.mustBeOrdinary("garment.use", garment.use());
        AskedEvents.Asked asked = events.of(told, id);
        Event event = asked.event();
        Design design = Refused.within("garment", () -> Designs.named(garment.design()));
        Measurements wearer = Refused.within("garment", () -> garment.measurements(sizes));
        Outfit outfit = outfits.of("garment.outfit", garment.outfit());
        mustBeSpells(outfit, event);
        SkinSide skin = new SkinSide(garment.touchesSkin(), outfit, isCold(event));
        Question question = new Question(
                event,
                wear(design, wearer, skin.touches()),
                wear(design, wearer, skin.touchesAtFire()),
                outfit,
                candidates.get());
        return new Asked(question, asked.version(), presumed(wearer, design, event, skin));
    }

    /** Whoever takes a part off in a spell has to name one that there is. */
    private static void mustBeSpells(Outfit outfit, Event event) {
        List<String> known = event.spells().stream().map(Spell::name).toList();
        for (int i = 0; i < outfit.parts().size(); i++) {
            String field = "garment.outfit[" + i + "].spells";
            outfit.parts().get(i).spells().stream()
                    .filter(name -> !known.contains(name))
                    .sorted()
                    .findFirst()
                    .ifPresent(name -> {
                        throw Refused.of(
                                field,
                                "names " + Words.quoted(name) + ", which is no spell of the event",
                                "take the names of its spells: " + String.join(", ", known));
                    });
        }
    }

    private static Wear wear(Design design, Measurements wearer, boolean onSkin) {
        return Refused.within("garment", () -> design.wear(onSkin, wearer));
    }

    /** Whether people wear more than one layer: where warm underwear is presumed, too. */
    private static boolean isCold(Event event) {
        return event.spells().stream().anyMatch(spell -> spell.airC() <= Wardrobe.COLD_C);
    }

    private static List<String> presumed(Measurements wearer, Design design, Event event, SkinSide skin) {
        List<String> presumed = new ArrayList<>();
        if (event.spellsPresumed()) {
            presumed.add("No spells were given: those usual for "
                    + event.season().name().toLowerCase(Locale.ROOT)
                    + " here were taken, not a forecast. Give the real weather when it is known.");
        }
        skin.sentence().ifPresent(presumed::add);
        presumed.addAll(Surroundings.presumed(event.spells(), event.place()));
        presumed.addAll(design.assumptions(wearer));
        return presumed;
    }
}
