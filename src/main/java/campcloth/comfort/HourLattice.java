package campcloth.comfort;

import campcloth.comfort.model.State;
import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.Worn;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The two-node body of one spell for any clothing, between runs of the model on a lattice of insulation and vapour resistance as
 * worn. The lattice is even in the logarithm of each with the air layer added, since heat and vapour pass in proportion to one
 * over that sum. Between four corners the state of the body and SET are mixed in proportion; how wet the skin is follows from the
 * state by the model's own formula.
 *
 * <p>Where that would not do, the model is run: in cells of which a corner lies outside the model, where sweating begins, near the
 * wettest skin (there the model swings), and wherever the middle of the cell is off by more than {@link #agree} allows. Corners
 * are fixed for the spell and run when first asked for, so an answer does not depend on what was asked before. May be shared
 * between threads. Steps and limits: project choice.
 */
final class HourLattice {

    private static final double STEP = 0.07;
    private static final double WETTEDNESS = 0.003;
    private static final double SKIN_K = 0.1;
    private static final double CORE_K = 0.05;
    private static final double SET_K = 0.2;

    /** How near the wettest skin the model swings, as a share of it. */
    private static final double SWINGS = 0.03;

    /** Air layer for the spacing alone: radiation of 4.7 W/(m2 K), convection 8.6 v^0.5, Lewis relation 16.5 K/kPa. */
    private final double airLayerM2KW;

    private final double airLayerM2KpaW;

    private final DirectPhysics direct;
    private final Map<Long, Optional<Hour>> corners = new ConcurrentHashMap<>();
    private final Map<Long, Optional<Cell>> cells = new ConcurrentHashMap<>();

    HourLattice(DirectPhysics direct) {
        double convection =
                8.6 * Math.sqrt(Math.max(0.1, direct.needs().surroundings().relativeMs()));
        this.direct = direct;
        this.airLayerM2KW = 1 / (4.7 + convection);
        this.airLayerM2KpaW = 1 / (16.5 * convection);
    }

    Hour at(Worn worn) {
        double u = Math.log(worn.insulationM2KW() + airLayerM2KW) / STEP;
        double v = Math.log(worn.vapourResistanceM2KpaW() + airLayerM2KpaW) / STEP;
        int i = (int) Math.floor(u);
        int j = (int) Math.floor(v);
        return cells.computeIfAbsent(key(i, j), k -> cell(i, j))
                .map(cell -> cell.at(direct.body(worn), u - i, v - j))
                .orElseGet(() -> direct.hour(worn));
    }

    private static long key(int i, int j) {
        return ((long) i << 32) | (j & 0xffffffffL);
    }

    private Optional<Cell> cell(int i, int j) {
        List<Hour> four = List.of(corner(i, j), corner(i + 1, j), corner(i, j + 1), corner(i + 1, j + 1)).stream()
                .flatMap(Optional::stream)
                .toList();
        if (four.size() < 4
                || four.stream().map(HourLattice::sweating).distinct().count() > 1
                || swings(four.get(0))) {
            return Optional.empty();
        }
        Cell cell = new Cell(four.get(0), four.get(1), four.get(2), four.get(3));
        Worn middle = worn(i + 0.5, j + 0.5);
        return agree(cell.at(direct.body(middle), 0.5, 0.5), direct.hour(middle))
                ? Optional.of(cell)
                : Optional.empty();
    }

    /** Empty outside the range of the model and of what can be worn. */
    private Optional<Hour> corner(int i, int j) {
        return corners.computeIfAbsent(key(i, j), k -> {
            Worn worn = worn(i, j);
            Surroundings around = direct.needs().surroundings();
            return worn.insulationM2KW() > 0
                            && worn.vapourResistanceM2KpaW() > 0
                            && TwoNode.outside(around.air(), around.highMet(), worn)
                                    .isEmpty()
                    ? Optional.of(direct.hour(worn))
                    : Optional.empty();
        });
    }

    private Worn worn(double u, double v) {
        return new Worn(Math.exp(u * STEP) - airLayerM2KW, Math.exp(v * STEP) - airLayerM2KpaW);
    }

    private enum Sweating {
        NONE,
        SOME,
        NEAR_THE_WETTEST,
        DRIPPING
    }

    private static Sweating sweating(Hour hour) {
        double share = hour.asked() / hour.wettest();
        if (hour.state().sweatCallGM2H() == 0) {
            return Sweating.NONE;
        }
        if (share < 1 - SWINGS) {
            return Sweating.SOME;
        }
        return share > 1 + SWINGS ? Sweating.DRIPPING : Sweating.NEAR_THE_WETTEST;
    }

    private static boolean swings(Hour hour) {
        return sweating(hour) == Sweating.NEAR_THE_WETTEST;
    }

    /** Up to 0.003 of the skin, and beyond a whole one that share; skin 0.1, core 0.05, SET 0.2 K. */
    private static boolean agree(Hour one, Hour other) {
        return within(one.wettedness(), other.wettedness(), WETTEDNESS)
                && within(one.asked(), other.asked(), WETTEDNESS * Math.max(1, other.asked()))
                && within(one.state().skinC(), other.state().skinC(), SKIN_K)
                && within(one.state().coreC(), other.state().coreC(), CORE_K)
                && within(one.standardEffectiveC(), other.standardEffectiveC(), SET_K);
    }

    private static boolean within(double one, double other, double limit) {
        return Math.abs(one - other) <= limit;
    }

    /**
     * One cell of the lattice.
     *
     * @param thin least insulation and vapour resistance
     * @param warm more insulation
     * @param close more vapour resistance
     * @param thick more of both
     */
    private record Cell(Hour thin, Hour warm, Hour close, Hour thick) {

        Hour at(TwoNode model, double s, double t) {
            State state = mixed(mixed(thin.state(), warm.state(), s), mixed(close.state(), thick.state(), s), t);
            double set = mixed(
                    mixed(thin.standardEffectiveC(), warm.standardEffectiveC(), s),
                    mixed(close.standardEffectiveC(), thick.standardEffectiveC(), s),
                    t);
            return Hour.in(model, state, set);
        }

        private static State mixed(State one, State other, double share) {
            return new State(
                    mixed(one.skinC(), other.skinC(), share),
                    mixed(one.coreC(), other.coreC(), share),
                    mixed(one.skinShare(), other.skinShare(), share),
                    mixed(one.bloodFlowLM2H(), other.bloodFlowLM2H(), share),
                    mixed(one.sweatCallGM2H(), other.sweatCallGM2H(), share));
        }

        private static double mixed(double one, double other, double share) {
            return one + share * (other - one);
        }
    }
}
