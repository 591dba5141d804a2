/**
 * Cutting layouts: outlines of pieces, their packing on a strip of cloth, lower bounds on its length, verification and
 * drawing. Lengths in cm; x runs across the cloth's width, y along its length (the grain). A piece lies as drawn, turned
 * by 180 degrees or mirrored where that is allowed, never off the grain. Imports {@code figure} only.
 */
@NullMarked
package campcloth.layout;

import org.jspecify.annotations.NullMarked;
