/**
 * The arithmetic of a measured swatch: means and their standard errors, reading errors, and what each measurement says. Lengths
 * cm, readings of a ruler mm, masses g. The face is {@link campcloth.cloth.Swatch} and {@link campcloth.cloth.SwatchFigures}.
 */
@NullMarked
package campcloth.cloth.swatch;

import org.jspecify.annotations.NullMarked;
