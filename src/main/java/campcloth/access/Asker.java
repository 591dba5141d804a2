package campcloth.access;

import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * Who asks.
 *
 * @param account the account that is logged in; none for the one owner of a local service, for the service itself and for strangers
 * @param roles what it may do
 * @param keys the keys of the links that the request carries
 */
public record Asker(Optional<UUID> account, Set<Role> roles, Set<ShareKey> keys) {

    /** The one owner of a service without accounts, and the service's own work at start: what it makes belongs to nobody. */
    public static final Asker LOCAL = new Asker(Optional.empty(), Set.of(Role.values()), Set.of());

    /** Somebody who is not logged in. */
    public static final Asker STRANGER = new Asker(Optional.empty(), Set.of(), Set.of());

    public Asker {
        roles = Set.copyOf(roles);
        keys = Set.copyOf(keys);
    }

    public static Asker of(UUID account, Set<Role> roles) {
        return new Asker(Optional.of(account), roles, Set.of());
    }

    public Asker with(Set<ShareKey> shown) {
        return new Asker(account, roles, shown);
    }

    public boolean is(Role role) {
        return roles.contains(role);
    }

    /** Whether what belongs to nobody is open to this asker: to everybody who may ask at all. */
    public boolean isKnown() {
        return !roles.isEmpty();
    }
}
