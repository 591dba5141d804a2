package campcloth.access;

import java.time.Instant;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;

/**
 * Somebody who may log in.
 *
 * @param roles what it may do; at least one
 * @param disabled may not log in any more; what it made stays
 * @param oneTime its password was made by somebody else, and has to be changed before anything else
 * @param stamp rises when all that is logged in has to log in anew
 * @param version rises with each change an administrator makes
 */
public record Account(
        UUID id,
        AccountName name,
        Set<Role> roles,
        boolean disabled,
        boolean oneTime,
        long stamp,
        Instant madeAt,
        long version) {

    public Account {
        // always told in the same order
        roles = Collections.unmodifiableSet(new TreeSet<>(roles));
    }

    /** Who asks when this account is logged in. */
    public Asker asker() {
        return Asker.of(id, roles);
    }
}
