/** The designs, one file each; seen from outside only through {@code garment.Designs}. */
@NullMarked
package campcloth.garment.design;

import org.jspecify.annotations.NullMarked;
