/** Room fire. */
@NullMarked
package campcloth.fire;

import org.jspecify.annotations.NullMarked;
