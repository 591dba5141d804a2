/** Pages about cloths: search, one cloth, cloths side by side, a form for one's own, the sources of all figures. */
@NullMarked
package campcloth.pages.cloths;

import org.jspecify.annotations.NullMarked;
