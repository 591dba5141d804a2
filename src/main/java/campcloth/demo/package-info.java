/**
 * The demo: an invented camp and a few invented cloths to try the program with, which can be removed at one go and then stay away.
 * May import {@code figure}, {@code fibre}, {@code cloth} and {@code event}.
 */
@NullMarked
package campcloth.demo;

import org.jspecify.annotations.NullMarked;
