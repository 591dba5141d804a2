/** Room layout. */
@NullMarked
package campcloth.layout;

import org.jspecify.annotations.NullMarked;
