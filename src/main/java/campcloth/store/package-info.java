/** Room store. */
@NullMarked
package campcloth.store;

import org.jspecify.annotations.NullMarked;
