/** Room garment. */
@NullMarked
package campcloth.garment;

import org.jspecify.annotations.NullMarked;
