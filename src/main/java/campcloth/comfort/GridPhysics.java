package campcloth.comfort;

import campcloth.comfort.InsulationLattice.Mixing;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.WetClothing;
import campcloth.comfort.model.WetClothing.Wetting;
import campcloth.comfort.model.Worn;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The models of one spell run once on a lattice, and what lies between taken from it. Held against the models: within 0.03 clo,
 * 0.01 of wettedness (0.01 of the wettedness asked for where that is above 1) and 0.02 of a vote; what is out of range is so by the
 * models' own word.
 */
final class GridPhysics implements Physics {

    private static final double CLO_STEP = 0.02;
    private static final double M2KW_STEP = CLO_STEP * Worn.M2KW_PER_CLO;

    private final DirectPhysics direct;
    private final HourLattice hours;
    private final InsulationLattice<Value> votes;
    private final Map<Wetting, InsulationLattice<WetClothing>> wet = new ConcurrentHashMap<>();

    GridPhysics(SpellNeeds needs) {
        this.direct = new DirectPhysics(needs);
        this.hours = new HourLattice(direct);
        this.votes = new InsulationLattice<>(CLO_STEP, clo -> direct.vote(clo).inRange(), new Votes());
    }

    @Override
    public SpellNeeds needs() {
        return direct.needs();
    }

    @Override
    public TwoNode body(Worn worn) {
        return direct.body(worn);
    }

    @Override
    public Hour hour(Worn worn) {
        return hours.at(worn);
    }

    @Override
    public WetClothing wet(double dryM2KW, Wetting wetting) {
        return wet.computeIfAbsent(wetting, this::wettings).at(dryM2KW).orElseGet(() -> direct.wet(dryM2KW, wetting));
    }

    private InsulationLattice<WetClothing> wettings(Wetting wetting) {
        return new InsulationLattice<>(M2KW_STEP, dry -> Optional.of(direct.wet(dry, wetting)), new Wettings());
    }

    @Override
    public Reading vote(double clo) {
        return votes.at(clo).<Reading>map(vote -> vote).orElseGet(() -> direct.vote(clo));
    }

    private static double mixed(double one, double other, double share) {
        return one + share * (other - one);
    }

    private static final class Votes implements Mixing<Value> {

        @Override
        public Value between(Value one, Value other, double share) {
            double vote = mixed(one.value(), other.value(), share);
            return new Value(vote, vote, vote);
        }

        @Override
        public boolean agree(Value one, Value other) {
            return Math.abs(one.value() - other.value()) <= 0.005;
        }
    }

    /** Up to 0.003 clo, and 0.1 W/m2 of drying. */
    private static final class Wettings implements Mixing<WetClothing> {

        @Override
        public WetClothing between(WetClothing one, WetClothing other, double share) {
            return new WetClothing(
                    mixed(one.equivalentM2KW(), other.equivalentM2KW(), share),
                    mixed(one.dryingWm2(), other.dryingWm2(), share));
        }

        @Override
        public boolean agree(WetClothing one, WetClothing other) {
            return Math.abs(one.equivalentM2KW() - other.equivalentM2KW()) <= 0.003 * Worn.M2KW_PER_CLO
                    && Math.abs(one.dryingWm2() - other.dryingWm2()) <= 0.1;
        }
    }
}
