/** How the burn-test key is read from its tables and weighed. Probabilities are 0 to 1. */
@NullMarked
package campcloth.fibre.burn;

import org.jspecify.annotations.NullMarked;
