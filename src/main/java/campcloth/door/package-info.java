/** Who may come in: the two modes, logging in, and who asks in each request. */
@NullMarked
package campcloth.door;

import org.jspecify.annotations.NullMarked;
