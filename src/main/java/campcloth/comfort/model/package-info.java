/** The published models, one class each, in the order and with the names of their standards; hidden from other rooms. */
@NullMarked
package campcloth.comfort.model;

import org.jspecify.annotations.NullMarked;
