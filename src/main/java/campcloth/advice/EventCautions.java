package campcloth.advice;

import static campcloth.figure.Words.number;

import campcloth.comfort.ComfortCautions;
import campcloth.comfort.SpellComfort;
import campcloth.comfort.Wardrobe;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.Spell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to bear in mind at an event whichever cloth is chosen. */
final class EventCautions {

    /** The fibre: Crow 1996, abstract read; that wool takes up rain more slowly: common practice, no source. */
    static final String RAIN =
            "Rain and wet clothes count only where a spell says damp or wet. Measured on cotton, polyester and underwear, the"
                    + " water in a cloth chills, not its fibre; dense wool is said to take up rain more slowly (common practice, no"
                    + " source). Have a dry layer to change into.";

    static final String WET =
            "Clothes told damp or wet are counted as that wet through the whole spell, and in the cold alone: heat is judged as"
                    + " though they were dry.";

    /** Air this cold or this hot is dangerous whatever is worn, and the models say nothing there: project choice. */
    private static final double DEADLY_COLD_C = -30;

    private static final double DEADLY_HEAT_C = 40;

    private EventCautions() {}

    static List<String> of(Event event, Bounds bounds) {
        List<String> cautions = new ArrayList<>();
        for (int i = 0; i < bounds.airy().size(); i++) {
            SpellComfort airy = bounds.airy().get(i);
            SpellComfort close = bounds.close().get(i);
            String name = "In \"" + airy.needs().spell().name() + "\" ";
            if (Sweat.dripsOff(airy)) {
                cautions.add(name + tooHot(airy.needs().spell()));
            }
            if (Cooling.tooSoon(close)) {
                cautions.add(name
                        + "no cloth alone keeps the wearer warm long enough: add a layer or a cloak, move, warm up in"
                        + " between.");
            }
            if (sleepsInTheCold(airy.needs().spell())) {
                cautions.add(
                        name + "bedding decides, not the cloth of a garment: sleep on and under wool, dry, out of the"
                                + " wind. Not computed here.");
            }
        }
        cautions.add(RAIN);
        if (event.spells().stream().anyMatch(spell -> spell.wetting().isPresent())) {
            cautions.add(WET);
        }
        cautions.addAll(ComfortCautions.of(event.spells(), event.place()));
        return cautions;
    }

    /** Why a spell cannot be judged though it may be dangerous; empty where it is judged, or mild. */
    static Optional<String> notComputed(SpellComfort spell) {
        Spell at = spell.needs().spell();
        boolean coldUnknown = spell.warmth().marginClo().inRange().isEmpty()
                && at.airC() <= Wardrobe.COLD_C
                && at.activity() != Activity.SLEEPING;
        boolean heatUnknown = spell.heat().wettednessAsked().inRange().isEmpty() && at.airC() >= DEADLY_HEAT_C;
        if (!coldUnknown && !heatUnknown && at.airC() > DEADLY_COLD_C) {
            return Optional.empty();
        }
        return Optional.of("\"" + at.name() + "\" (" + number(at.airC())
                + " degrees Celsius) lies outside the models: nothing here"
                + " says that this clothing is enough. Ask people who know such weather.");
    }

    private static String tooHot(Spell spell) {
        return spell.activity() == Activity.SLEEPING
                ? "no cloth keeps the sleeper comfortable: let air through the tent, cover less, drink."
                : "no cloth keeps the wearer comfortable: the body cannot get rid of its heat at that work in that heat."
                        + " Short bouts, shade, drink, fewer layers.";
    }

    private static boolean sleepsInTheCold(Spell spell) {
        return spell.activity() == Activity.SLEEPING && spell.airC() <= Wardrobe.COLD_C;
    }
}
