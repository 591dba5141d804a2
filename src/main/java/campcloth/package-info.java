/** The roof of the house: starts the application and wires the rooms. Nothing below may import it. */
@NullMarked
package campcloth;

import org.jspecify.annotations.NullMarked;
