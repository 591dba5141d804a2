/**
 * Garments to sew: designs, the measurements they need, their pieces with allowances, seams, hems, thread and needle. Lengths
 * in cm, stitch distances in mm, thread in m; pieces lie with the grain along y. May import {@code figure}, {@code cloth} and
 * {@code layout}; the designs themselves are hidden in {@code design}, one file each.
 */
@NullMarked
package campcloth.garment;

import org.jspecify.annotations.NullMarked;
