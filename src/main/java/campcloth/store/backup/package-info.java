/**
 * All that is kept as one file, and back again. The list of tables comes from the database's own catalogue, so that a new table
 * need not be told of here.
 */
@NullMarked
package campcloth.store.backup;

import org.jspecify.annotations.NullMarked;
