/**
 * The service as programs see it: JSON over HTTP, names in camelCase with the unit in the name, errors as RFC 9457 problems
 * that name the field and the remedy. Translates and answers; decides nothing. May import every core room, never
 * {@code store}.
 */
@NullMarked
package campcloth.rest;

import org.jspecify.annotations.NullMarked;
