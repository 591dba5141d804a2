/**
 * The PostgreSQL server that the application owns: unpacked, made, started and stopped by it in one private folder, used
 * when no {@code spring.datasource.url} is set.
 *
 * <p>The order of a start is the safety of the data: folder and its owner, then the lock, then a server left over from a
 * killed application, and only then the programs, the cluster and the new server. Tested on Linux only; macOS and Windows
 * are provided for where that was cheap (permissions, names of programs), but have not been tried.
 */
@NullMarked
package campcloth.store.postgres;

import org.jspecify.annotations.NullMarked;
