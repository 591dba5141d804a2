/** Pages for lists: suppliers' lists taken over, what is one's own taken away. */
@NullMarked
package campcloth.pages.lists;

import org.jspecify.annotations.NullMarked;
