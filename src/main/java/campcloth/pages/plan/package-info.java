/** Plan a garment: the event, the garment, the cloths ranked for it, some of them side by side. */
@NullMarked
package campcloth.pages.plan;

import org.jspecify.annotations.NullMarked;
