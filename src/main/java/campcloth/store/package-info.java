/**
 * The edge to PostgreSQL: tables and their rows, the ports of the nouns put into practice, the catalogue files and their
 * loading, the snapshot of the catalogue in memory. Nobody may import it; it implements what {@code cloth}, {@code event}
 * and {@code plan} ask for.
 */
@NullMarked
package campcloth.store;

import org.jspecify.annotations.NullMarked;
