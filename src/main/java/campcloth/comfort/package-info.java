/** Room comfort. */
@NullMarked
package campcloth.comfort;

import org.jspecify.annotations.NullMarked;
