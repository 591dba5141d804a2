package campcloth.errand;

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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A garment at an event, as somebody asks which cloth it takes. What is refused of it is named under {@code garment}.
 *
 * @param event the event
 * @param design the garment's design
 * @param wearer who wears it
 * @param touchesSkin whether its cloth touches the skin, where somebody said
 * @param outfit what is worn with it or sewn into it besides its own cloth
 */
public record Asking(Event event, Design design, Measurements wearer, Optional<Boolean> touchesSkin, Outfit outfit) {

    private static final String GARMENT = "garment";

    /** The design of that key, refused as {@code garment.design}. */
    public static Design design(String key) {
        return Refused.within(GARMENT, () -> Designs.named(key));
    }

    /** The question about the cloths given, with what it presumes; the cloths are looked up after all else was looked at. */
    public Asked about(Supplier<List<Candidate>> candidates) {
        mustBeSpells();
        SkinSide skin = new SkinSide(touchesSkin, outfit, isCold());
        Question question =
                new Question(event, wear(skin.touches()), wear(skin.touchesAtFire()), outfit, candidates.get());
        return new Asked(question, presumed(skin));
    }

    /** Whoever takes a part off in a spell has to name one that there is. */
    private void mustBeSpells() {
        List<String> known = event.spells().stream().map(Spell::name).toList();
        for (int i = 0; i < outfit.parts().size(); i++) {
            String field = GARMENT + ".outfit[" + i + "].spells";
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

    private Wear wear(boolean onSkin) {
        return Refused.within(GARMENT, () -> design.wear(onSkin, wearer));
    }

    /** Whether people wear more than one layer: where warm underwear is presumed, too. */
    private boolean isCold() {
        return event.spells().stream().anyMatch(spell -> spell.airC() <= Wardrobe.COLD_C);
    }

    private List<String> presumed(SkinSide skin) {
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
