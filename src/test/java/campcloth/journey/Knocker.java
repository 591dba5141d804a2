package campcloth.journey;

import campcloth.access.Role;
import java.util.Set;

/** Who asks in the tables of {@code access/}: a stranger, an account of each role that makes things besides, one of each role alone. */
enum Knocker {
    STRANGER(),
    MAKER(Role.MAKER),
    KEEPER(Role.KEEPER, Role.MAKER),
    MARSHAL(Role.MARSHAL, Role.MAKER),
    ADMINISTRATOR(Role.ADMINISTRATOR, Role.MAKER),
    ONLY_KEEPER(Role.KEEPER),
    ONLY_MARSHAL(Role.MARSHAL),
    ONLY_ADMINISTRATOR(Role.ADMINISTRATOR);

    private final Set<Role> roles;

    Knocker(Role... roles) {
        this.roles = Set.of(roles);
    }

    Set<Role> roles() {
        return roles;
    }

    boolean is(Role role) {
        return roles.contains(role);
    }

    boolean isStranger() {
        return roles.isEmpty();
    }

    String accountName() {
        return "knocks-as-" + name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
