package campcloth.comfort;

import campcloth.event.Place;
import campcloth.event.Spell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Some minutes of an event through which nothing around the wearer changes: a whole spell, or a piece of one through which the
 * sun moves.
 *
 * @param spell number of the spell, from 0
 * @param fromMinute first minute, counted from the begin of the event
 * @param toMinute minute after the last
 * @param needs what is asked of clothing then
 */
public record Stretch(int spell, int fromMinute, int toMinute, SpellNeeds needs) {

    private static final double PIECE_H = 0.25;

    /** Beyond so many hours the sun is followed by the hour. */
    private static final double LONG_EVENT_H = 96;

    private static final double LONG_PIECE_H = 1;

    public int minutes() {
        return toMinute - fromMinute;
    }

    /** The stretches of an event, in their order, whole minutes each. */
    static List<Stretch> of(List<SpellNeeds> spells, Optional<Place> place) {
        double all = spells.stream().mapToDouble(s -> s.spell().hours()).sum();
        double longest = all > LONG_EVENT_H ? LONG_PIECE_H : PIECE_H;
        List<Stretch> stretches = new ArrayList<>();
        double begin = 0;
        for (int i = 0; i < spells.size(); i++) {
            Spell spell = spells.get(i).spell();
            int pieces = Overhead.moves(spell, place) ? (int) Math.ceil(spell.hours() / longest) : 1;
            for (int piece = 0; piece < pieces; piece++) {
                double from = spell.hours() * piece / pieces;
                double to = spell.hours() * (piece + 1) / pieces;
                SpellNeeds needs = pieces == 1
                        ? spells.get(i)
                        : SpellNeeds.of(spell, Surroundings.between(spell, place, from, to));
                stretches.add(new Stretch(i, minute(begin + from), minute(begin + to), needs));
            }
            begin += spell.hours();
        }
        return stretches;
    }

    private static int minute(double hours) {
        return (int) Math.round(hours * 60);
    }
}
