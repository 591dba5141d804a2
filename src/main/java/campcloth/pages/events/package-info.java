/** Pages about events: the list, one event, its form, the sheet of fire rules to hang up, and the demo. */
@NullMarked
package campcloth.pages.events;

import org.jspecify.annotations.NullMarked;
