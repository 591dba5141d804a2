/** Who asks, what kept things belong to whom, and who may read or change them. */
@NullMarked
package campcloth.access;

import org.jspecify.annotations.NullMarked;
