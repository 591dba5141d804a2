/** What lies under the service and fails it now and then: database and disk. */
@NullMarked
package campcloth.outage;

import org.jspecify.annotations.NullMarked;
