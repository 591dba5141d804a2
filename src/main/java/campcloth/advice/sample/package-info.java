/** Points and distributions to sample intervals with. */
@NullMarked
package campcloth.advice.sample;

import org.jspecify.annotations.NullMarked;
