/** The formulas of the room: radiant heat, cloth in steady heat, the axes of hazard and the matrix that joins them. */
@NullMarked
package campcloth.fire.model;

import org.jspecify.annotations.NullMarked;
