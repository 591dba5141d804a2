/**
 * What a number is: its interval, how far it can be trusted, where it comes from; what a refusal is; how reference tables
 * are read. The ground floor: imports no other room.
 */
@NullMarked
package campcloth.figure;

import org.jspecify.annotations.NullMarked;
