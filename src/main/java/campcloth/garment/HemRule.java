package campcloth.garment;

import java.util.function.BiFunction;
import java.util.function.BiPredicate;

/**
 * A rule for hemming: which edges in which cloth it speaks of, and how those are hemmed.
 *
 * @param name name of the rule
 * @param speaksOf whether it speaks of the edge in the cloth
 * @param hem the hem it asks for
 */
record HemRule(String name, BiPredicate<HemEdge, SewnCloth> speaksOf, BiFunction<HemEdge, SewnCloth, Hem> hem) {}
