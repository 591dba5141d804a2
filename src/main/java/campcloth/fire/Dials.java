package campcloth.fire;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.FibreFamily;
import campcloth.fibre.Fibres;
import campcloth.fire.model.PointSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What can be changed in a case, each as a dial: the same change in steps, from the least to the greatest. The steps are 0.1 m,
 * 10 g/m2 and one percent of mass. How far each is turned at most is a project choice.
 */
final class Dials {

    /** Who stands further off is no longer at that fire, m. */
    private static final int MOST_M = 50;

    /** Heavier cloth is hardly sold for clothing, g/m2. */
    private static final int MOST_GSM = 900;

    /** Cloth more than so many times as heavy is another cloth altogether: no veil is made heavy. */
    private static final int MOST_TIMES = 3;

    private static final int STEPS_A_METRE = 10;
    private static final int STEP_GSM = 10;

    /** Where people sit at the nearest, m, as {@link FireRole#SEATED} says. */
    private static final double NEAREST_SEAT_M = 1.5;

    /** Where people pass at the nearest, m, as {@link FireRole#PASSING} says. */
    private static final double NEAREST_PASSING_M = 3;

    /** Of a blend of many fibres only the greatest shares are looked at one by one. */
    private static final int MOST_FIBRES = 4;

    private static final double ROUNDING = 1e-9;

    private static final List<String> IN_PLACE = List.of("wool", "flax", "cotton");

    private final Fibres fibres;

    Dials(Fibres fibres) {
        this.fibres = fibres;
    }

    /** The steps of every dial that this case has, one list a dial. */
    List<List<Change>> of(FireCase now) {
        List<List<Change>> dials = new ArrayList<>();
        dials.add(distances(now));
        dials.add(places(now));
        WornCloth cloth = now.cloth();
        dials.add(cloth.layer() == Layer.OUTER ? List.of() : List.of(new Change.OtherLayer()));
        dials.add(cloth.fit() == Fit.CLOSE ? List.of() : List.of(new Change.CloseFit()));
        dials.add(cloth.hasFilm() ? List.of(new Change.NoFilm()) : List.of());
        dials.add(cloth.isRaised() || cloth.isOpen() ? List.of(new Change.PlainSurface()) : List.of());
        dials.add(weights(cloth));
        dials.addAll(blends(cloth.blend()));
        dials.removeIf(List::isEmpty);
        return dials;
    }

    /** Fibres that can take the place of others: those that do not melt and that every shop has. */
    List<Fibre> inPlaceOf(List<Fibre> others) {
        return IN_PLACE.stream()
                .flatMap(key -> fibres.named(key).stream())
                .filter(fibre -> !others.contains(fibre))
                .toList();
    }

    /**
     * From where people stand at the nearest, for who is told another place may have a fire nearer than before: steps that are no
     * change better nothing. Never inside the ring nor a near field, where the formula for radiant heat does not hold.
     */
    private static List<Change> distances(FireCase now) {
        if (now.fires().isEmpty()) {
            return List.of();
        }
        int least = now.fires().stream().mapToInt(f -> stepsUp(leastM(f))).max().orElse(0);
        return IntStream.rangeClosed(least, MOST_M * STEPS_A_METRE)
                .mapToObj(step -> (Change) new OtherPlace.KeepDistance(step / (double) STEPS_A_METRE))
                .toList();
    }

    private static double leastM(OpenFire fire) {
        return Math.max(
                Exposure.RING_M, PointSource.nearFieldM(Exposure.of(fire).fireKwOrPresumed()));
    }

    private static double standBackM(OpenFire fire, FireCase now) {
        return StandBack.of(now.cloth(), Exposure.of(fire).fireKwOrPresumed()).metres();
    }

    private static int stepsUp(double metres) {
        return (int) Math.ceil(metres * STEPS_A_METRE - ROUNDING);
    }

    /** For hands at a flame only: who sits can sit farther off, which comes to the same as passing there. */
    private static List<Change> places(FireCase now) {
        if (now.fires().stream().noneMatch(fire -> Exposure.handsAtTheFire(fire.role()))) {
            return List.of();
        }
        return Stream.of(FireRole.SEATED, FireRole.PASSING)
                .flatMap(role -> place(role, now).stream())
                .toList();
    }

    /** One distance for all the fires whose place changes: none of them is approached, nor nearer than the cloth has to keep. */
    private static Optional<Change> place(FireRole role, FireCase now) {
        double usual = role == FireRole.SEATED ? NEAREST_SEAT_M : NEAREST_PASSING_M;
        return now.fires().stream()
                .filter(fire -> fire.role().compareTo(role) > 0)
                .map(fire -> Math.max(
                        Math.max(usual, standBackM(fire, now)), fire.distanceM().orElse(0.0)))
                .max(Double::compare)
                .map(metres -> new OtherPlace.StayOutOfReach(role, stepsUp(metres) / (double) STEPS_A_METRE));
    }

    private static List<Change> weights(WornCloth cloth) {
        int first = (int) Math.floor(cloth.weight().lowGsm() / STEP_GSM + ROUNDING) + 1;
        int most = (int) Math.min(MOST_GSM, MOST_TIMES * cloth.weight().givenGsm()) / STEP_GSM;
        return IntStream.rangeClosed(first, most)
                .mapToObj(step -> (Change) new Change.Heavier(step * STEP_GSM))
                .toList();
    }

    private List<List<Change>> blends(Blend blend) {
        List<List<Fibre>> groups = new ArrayList<>();
        blend.shares().stream().limit(MOST_FIBRES).forEach(share -> groups.add(List.of(share.fibre())));
        melting(blend).ifPresent(groups::add);
        List<List<Change>> dials = new ArrayList<>();
        for (List<Fibre> group : groups) {
            inPlaceOf(group).forEach(other -> dials.add(shares(blend, group, other)));
        }
        return dials;
    }

    /** All that melts or may melt, where that is more than one fibre. */
    private static Optional<List<Fibre>> melting(Blend blend) {
        List<Fibre> group = blend.shares().stream()
                .map(Blend.Share::fibre)
                .filter(fibre -> fibre.family().countsAsMeltable())
                .toList();
        return group.size() > 1 ? Optional.of(group) : Optional.empty();
    }

    /** Of a fibre that nobody named no smaller share can be had: only none of it. */
    private static List<Change> shares(Blend blend, List<Fibre> group, Fibre other) {
        double now = blend.shares().stream()
                .filter(share -> group.contains(share.fibre()))
                .mapToDouble(Blend.Share::percent)
                .sum();
        int most = (int) Math.ceil(now - ROUNDING) - 1;
        boolean unnamed = group.stream().anyMatch(fibre -> fibre.family() == FibreFamily.UNNAMED);
        return IntStream.rangeClosed(unnamed ? most : 0, most)
                .mapToObj(step -> (Change) new OtherBlend(group, most - step, List.of(other)))
                .toList();
    }
}
