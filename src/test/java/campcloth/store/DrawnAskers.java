package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.Role;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;

/** Whoever may ask, drawn from a seed. */
final class DrawnAskers {

    private DrawnAskers() {}

    /** Five accounts with drawn roles, the owner of a service without accounts, a stranger. */
    static List<Asker> of(long seed) {
        SplittableRandom roles = new SplittableRandom(seed);
        List<Asker> people = new ArrayList<>(List.of(Asker.LOCAL, Asker.STRANGER));
        for (int i = 0; i < 5; i++) {
            Set<Role> some = EnumSet.of(Role.MAKER);
            for (Role role : Role.values()) {
                if (roles.nextInt(3) == 0) {
                    some.add(role);
                }
            }
            people.add(Asker.of(new UUID(seed, i), some));
        }
        return people;
    }

    static List<Asker> makers(List<Asker> people) {
        return people.stream().filter(asker -> asker.is(Role.MAKER)).toList();
    }
}
