/**
 * Keeps what people add (cloths, swatches, events, plans) in PostgreSQL: the adapters behind the ports that the rooms
 * declare. An edge: Spring and SQL live here, and no other edge may use it.
 */
@NullMarked
package campcloth.store;

import org.jspecify.annotations.NullMarked;
