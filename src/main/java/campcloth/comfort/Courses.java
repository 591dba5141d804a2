package campcloth.comfort;

import campcloth.cloth.Cloth;
import campcloth.cloth.Wear;
import java.util.ArrayList;
import java.util.List;

/**
 * The course of an event in any cloth, minute by minute: the two-node bodies and the sweat in their clothing go on from spell to
 * spell in the order given. Two are followed, as elsewhere: one who works little, for cold, and one who works much, for heat; at a
 * change of activity the first is presumed as wet with sweat as the second. At the best figures of the cloth; its intervals are
 * not in it.
 *
 * <p>Starts rested and dry. Sleep is not followed, bedding decides: after it the wearer starts again rested and dry. Where
 * the two-node model does not hold but ISO 11079 does, cold is judged by insulation alone; after such a spell with less than the
 * minimal insulation the skin starts at its minimal criterion. Once hardly anything changes the rest of the stretch is taken as
 * the same, so that long spells cost no more than short ones. Between spells layers are put on and off as the wardrobe of each
 * says; the sweat in the clothing goes on as though it were all in what stays on. In a spell told damp or wet it insulates
 * less, for cold ({@link WetWear}); what is sweated into it takes no insulation away.
 * That loss is reckoned for the skin of comfort: on a colder one drying takes less, so it errs on the cold side.
 */
public final class Courses {

    private final Comfort comfort;
    private final List<Stretch> stretches;

    private Courses(Comfort comfort, List<Stretch> stretches) {
        this.comfort = comfort;
        this.stretches = stretches;
    }

    public static Courses in(Comfort comfort) {
        return new Courses(comfort, Stretch.of(comfort.needs(), comfort.place()));
    }

    /** How many minutes the event has. */
    public int minutes() {
        return stretches.get(stretches.size() - 1).toMinute();
    }

    /**
     * The course in a cloth.
     *
     * @param completed cloth whose thickness, air permeability and vapour resistance are known or estimated
     */
    public Course of(Cloth completed, Wear wear) {
        return in(comfort.ensembles(completed, wear));
    }

    /** The course in the clothing of each spell. */
    Course in(List<Ensemble> clothing) {
        List<Moment> moments = new ArrayList<>(minutes());
        Before before = new Before.Rested();
        for (Stretch stretch : stretches) {
            Walk walk = Walk.of(stretch, clothing.get(stretch.spell()), before);
            walk.through(moments);
            before = walk.left();
        }
        return new Course(comfort.needs(), moments);
    }
}
