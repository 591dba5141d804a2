/** Figures with a tape on them. Drawn by eye in units of their own; nothing is measured on them. */
@NullMarked
package campcloth.garment.drawing;

import org.jspecify.annotations.NullMarked;
