package campcloth.fire;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.OpenFire;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.fibre.Blend;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A worn cloth at an event, and the same with one thing changed. The rules of the event are handed on as they are: nothing here
 * can change one.
 *
 * @param cloth the cloth as it is worn
 * @param event where it is worn
 */
public record FireCase(WornCloth cloth, Event event) {

    /** At one fire, without any rule; weather and season are of no account to the fire grading. */
    public static FireCase bare(WornCloth cloth, Exposure exposure) {
        OpenFire fire = new OpenFire(exposure.role(), exposure.distanceM(), exposure.fireKw(), exposure.kind());
        Spell spell = new Spell("fire", 1, 15, 60, 0, Sun.NONE, Activity.SEATED, Optional.of(fire));
        return new FireCase(cloth, new Event("", Season.SUMMER, List.of(spell), List.of()));
    }

    /** The fires that the wearer has a place at. */
    List<OpenFire> fires() {
        return event.spells().stream().flatMap(s -> s.fireInUse().stream()).toList();
    }

    /** With every fire in use changed. */
    FireCase withFires(UnaryOperator<OpenFire> change) {
        List<Spell> spells = event.spells().stream()
                .map(spell ->
                        spell.fireInUse().isPresent() ? at(spell, spell.fire().map(change)) : spell)
                .toList();
        return new FireCase(
                cloth, new Event(event.name(), event.season(), spells, event.rules(), event.spellsPresumed()));
    }

    FireCase withBlend(Blend blend) {
        return with(blend, cloth.weight(), cloth.surface(), cloth.finish(), cloth.weave(), cloth.fit(), cloth.layer());
    }

    FireCase withWeight(double gsm) {
        return with(
                cloth.blend(),
                ClothWeight.exactly(gsm),
                cloth.surface(),
                cloth.finish(),
                cloth.weave(),
                cloth.fit(),
                cloth.layer());
    }

    FireCase withFit(Fit fit) {
        return with(cloth.blend(), cloth.weight(), cloth.surface(), cloth.finish(), cloth.weave(), fit, cloth.layer());
    }

    FireCase withLayer(Layer layer) {
        return with(cloth.blend(), cloth.weight(), cloth.surface(), cloth.finish(), cloth.weave(), cloth.fit(), layer);
    }

    FireCase withMake(Surface surface, Finish finish, Weave weave) {
        return with(cloth.blend(), cloth.weight(), surface, finish, weave, cloth.fit(), cloth.layer());
    }

    private FireCase with(
            Blend blend, ClothWeight weight, Surface surface, Finish finish, Weave weave, Fit fit, Layer layer) {
        return new FireCase(new WornCloth(blend, weight, surface, finish, weave, fit, layer), event);
    }

    private static Spell at(Spell spell, Optional<OpenFire> fire) {
        return new Spell(
                spell.name(),
                spell.hours(),
                spell.airC(),
                spell.humidityPercent(),
                spell.windMs(),
                spell.sun(),
                spell.activity(),
                fire);
    }
}
