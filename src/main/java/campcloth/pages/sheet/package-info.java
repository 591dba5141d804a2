/** From the chosen cloth to the plan sheet: what the shop tells, the sheet as a page, on paper and as PDF. */
@NullMarked
package campcloth.pages.sheet;

import org.jspecify.annotations.NullMarked;
