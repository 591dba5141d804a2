/** Room advice. */
@NullMarked
package campcloth.advice;

import org.jspecify.annotations.NullMarked;
