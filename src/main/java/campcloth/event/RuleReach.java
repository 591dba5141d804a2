package campcloth.event;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where and for whom a rule holds.
 *
 * @param withinM distance from a fire within which it holds, m; empty: everywhere
 * @param roles what a wearer does at a fire for it to hold; empty: whatever it is, and without a fire too
 */
public record RuleReach(Optional<Double> withinM, Set<FireRole> roles) {

    private static final Range WITHIN = new Range("withinM", 0, 1000, "m");

    /** Holds everywhere, for everybody. */
    public static final RuleReach EVERYWHERE = new RuleReach(Optional.empty(), Set.of());

    public RuleReach {
        withinM.ifPresent(WITHIN::check);
        if (roles.contains(FireRole.NONE)) {
            throw Refused.of("roles", "has NONE, which is no place at a fire", "leave roles out for a rule for all");
        }
        roles = Collections.unmodifiableSet(new TreeSet<>(roles));
    }

    /** Whether it holds for what is done at a fire. */
    public boolean concerns(FireRole role) {
        return roles.isEmpty() || roles.contains(role);
    }
}
