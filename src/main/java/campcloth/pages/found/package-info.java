/** Pages for finding out what a cloth is: swatches that are measured, threads that are burnt. */
@NullMarked
package campcloth.pages.found;

import org.jspecify.annotations.NullMarked;
