/**
 * Lists of cloth as suppliers send them: which column is what, in which unit, what each row says, how it joins what is kept, and
 * lists written so that they can be read again. CSV (RFC 4180) in UTF-8. May import {@code figure}, {@code fibre} and
 * {@code cloth}.
 */
@NullMarked
package campcloth.supply;

import org.jspecify.annotations.NullMarked;
