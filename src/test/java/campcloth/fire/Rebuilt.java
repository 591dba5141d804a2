package campcloth.fire;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.fibre.Blend;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** A case with changes made to it, rebuilt from their short words alone: beside the code that made them, not with it. */
final class Rebuilt {

    private Rebuilt() {}

    /** The case as the short words of the changes say, those of one kind by a step less. */
    static FireCase of(FireCase now, List<Change> changes, int less, Change.Kind lessOf, int choice) {
        WornCloth cloth = now.cloth();
        Event event = now.event();
        for (Change change : changes) {
            String to = change.to();
            int step = change.kind() == lessOf ? less : 0;
            switch (change.kind()) {
                case KEEP_DISTANCE -> event = placed(event, Optional.empty(), number(to) - 0.1 * step);
                case STAY_OUT_OF_REACH -> {
                    String[] words = to.split(" at ");
                    event = placed(event, Optional.of(FireRole.valueOf(words[0])), number(words[1]));
                }
                case OTHER_PART -> throw new IllegalArgumentException(to);
                case OTHER_LAYER -> cloth = copy(cloth, cloth.blend(), cloth.weight(), cloth.fit(), Layer.valueOf(to));
                case CLOSE_FIT -> cloth = copy(cloth, cloth.blend(), cloth.weight(), Fit.valueOf(to), cloth.layer());
                case HEAVIER -> {
                    double gsm = number(to) - 10 * step;
                    cloth = copy(cloth, cloth.blend(), new ClothWeight(gsm, gsm), cloth.fit(), cloth.layer());
                }
                case NO_FILM -> cloth = made(cloth, cloth.surface(), Finish.NONE, cloth.weave());
                case PLAIN_SURFACE -> {
                    boolean other = Set.of(Weave.OPEN_PLAIN, Weave.PILE, Weave.FLEECE, Weave.FUR)
                            .contains(cloth.weave());
                    cloth = made(
                            cloth,
                            Surface.PLAIN,
                            cloth.finish() == Finish.BRUSHED ? Finish.NONE : cloth.finish(),
                            other ? Weave.PLAIN : cloth.weave());
                }
                case OTHER_BLEND ->
                    cloth = copy(
                            cloth,
                            mixed(cloth.blend(), to, number(to) + step, choice),
                            cloth.weight(),
                            cloth.fit(),
                            cloth.layer());
            }
        }
        return new FireCase(cloth, event);
    }

    private static Blend mixed(Blend blend, String to, double percent, int choice) {
        Set<String> less = less(to);
        String[] rest = to.split(", rest ")[1].split("/");
        Map<String, Double> shares = new TreeMap<>();
        double had = 0;
        for (Blend.Share share : blend.shares()) {
            had += less.contains(share.fibre().key()) ? share.percent() : 0;
        }
        for (Blend.Share share : blend.shares()) {
            double part = less.contains(share.fibre().key()) ? share.percent() * percent / had : share.percent();
            if (part > 0) {
                shares.merge(share.fibre().key(), part, Double::sum);
            }
        }
        shares.merge(rest[Math.min(choice, rest.length - 1)], had - percent, Double::sum);
        return Draw.blend(shares);
    }

    private static Set<String> less(String to) {
        return Set.of(to.split(", rest ")[0].split(" % ")[1].split("\\+"));
    }

    static double percentOf(FireCase now, String to) {
        return less(to).stream().mapToDouble(now.cloth().blend()::percentOf).sum();
    }

    static double number(String to) {
        return Double.parseDouble(to.split(" ")[0]);
    }

    static WornCloth copy(WornCloth cloth, Blend blend, ClothWeight weight, Fit fit, Layer layer) {
        return new WornCloth(blend, weight, cloth.surface(), cloth.finish(), cloth.weave(), fit, layer);
    }

    private static WornCloth made(WornCloth cloth, Surface surface, Finish finish, Weave weave) {
        return new WornCloth(cloth.blend(), cloth.weight(), surface, finish, weave, cloth.fit(), cloth.layer());
    }

    /** A role in place of greater ones; without one, where no hands come to the flame. */
    private static Event placed(Event event, Optional<FireRole> role, double metres) {
        return FireFixtures.event(
                event.rules(),
                event.spells().stream()
                        .flatMap(s -> s.fireInUse().stream())
                        .map(f -> {
                            boolean moves = role.map(r -> f.role().ordinal() > r.ordinal())
                                    .orElse(f.role() == FireRole.SEATED || f.role() == FireRole.PASSING);
                            double now = f.distanceM().orElse(0.0);
                            return moves
                                    ? new OpenFire(
                                            role.orElse(f.role()),
                                            Optional.of(Math.max(now, metres)),
                                            f.fireKw(),
                                            f.kind())
                                    : f;
                        })
                        .toArray(OpenFire[]::new));
    }
}
