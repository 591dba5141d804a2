/**
 * The first question: which cloth? Six criteria, each a computed quantity with its unit and interval, turned into a score by
 * a declared curve; a verdict that gates before the score; a ranking with reasons. May import {@code figure}, {@code fibre},
 * {@code cloth}, {@code event}, {@code comfort}, {@code fire}.
 */
@NullMarked
package campcloth.advice;

import org.jspecify.annotations.NullMarked;
