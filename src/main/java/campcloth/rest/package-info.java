/** Room rest. */
@NullMarked
package campcloth.rest;

import org.jspecify.annotations.NullMarked;
