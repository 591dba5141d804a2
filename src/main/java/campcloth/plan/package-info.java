/** Room plan. */
@NullMarked
package campcloth.plan;

import org.jspecify.annotations.NullMarked;
