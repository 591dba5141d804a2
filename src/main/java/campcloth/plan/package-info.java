/**
 * How much cloth to buy and how to cut it: one cloth and one or more garments in, a cutting plan out. Lengths in cm. A plan
 * is plain records, so that it can be kept and drawn again. May import {@code figure}, {@code cloth}, {@code garment} and
 * {@code layout}.
 */
@NullMarked
package campcloth.plan;

import org.jspecify.annotations.NullMarked;
