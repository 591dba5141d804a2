package campcloth.fire;

import static campcloth.fire.Draw.claim;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireRole;
import campcloth.fibre.Blend;
import java.util.List;

/** Compares grades, and makes of one cloth another that differs in one thing. */
final class Grades {

    private static final double ROUNDING = 1e-9;

    private Grades() {}

    /** Seated 2 m from a fire of unknown size. */
    static FireHazard seated(WornCloth cloth) {
        return FireGrading.grade(cloth, FireFixtures.at(FireRole.SEATED, 2));
    }

    static void neverLower(WornCloth milder, WornCloth worse, Exposure exposure) {
        neverLower(FireGrading.grade(milder, exposure), FireGrading.grade(worse, exposure), milder, worse, exposure);
    }

    static void neverLower(WornCloth cloth, Exposure milder, Exposure worse) {
        neverLower(FireGrading.grade(cloth, milder), FireGrading.grade(cloth, worse), cloth, milder, worse);
    }

    private static void neverLower(FireHazard milder, FireHazard worse, Object... of) {
        claim(
                milder.hazard() <= worse.hazard() + ROUNDING
                        && milder.grade().compareTo(worse.grade()) <= 0
                        && milder.meltWarning().compareTo(worse.meltWarning()) <= 0,
                List.of(of),
                milder,
                worse);
    }

    static WornCloth of(WornCloth c, Blend blend) {
        return new WornCloth(blend, c.weight(), c.surface(), c.finish(), c.weave(), c.fit(), c.layer());
    }

    static WornCloth ofWeight(WornCloth c, double weightGsm) {
        return ofWeight(c, ClothWeight.exactly(weightGsm));
    }

    static WornCloth ofWeight(WornCloth c, ClothWeight weight) {
        return new WornCloth(c.blend(), weight, c.surface(), c.finish(), c.weave(), c.fit(), c.layer());
    }

    static WornCloth inLayer(WornCloth c, Layer layer) {
        return new WornCloth(c.blend(), c.weight(), c.surface(), c.finish(), c.weave(), c.fit(), layer);
    }

    static WornCloth fitting(WornCloth c, Fit fit) {
        return new WornCloth(c.blend(), c.weight(), c.surface(), c.finish(), c.weave(), fit, c.layer());
    }

    static WornCloth made(WornCloth c, Surface surface, Finish finish, Weave weave) {
        return new WornCloth(c.blend(), c.weight(), surface, finish, weave, c.fit(), c.layer());
    }
}
