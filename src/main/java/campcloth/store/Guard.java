package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Holding;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.access.ThingKind;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** What the present asker may do with what is kept. Whatever the tables of this package are read or changed for passes here. */
@Component
class Guard {

    private final Askers askers;

    Guard(Askers askers) {
        this.askers = askers;
    }

    Asker asker() {
        return askers.now();
    }

    /** To whom belongs what is made now. */
    Holding made() {
        return Holding.madeBy(asker());
    }

    boolean mayRead(Holding holding) {
        return holding.mayRead(asker());
    }

    boolean lists(Holding holding) {
        return holding.isListedFor(asker());
    }

    /** Refuses to change what the asker may only read. */
    void checkMayChange(Holding holding, ThingKind kind) {
        if (!holding.mayChange(asker(), kind.keeper())) {
            throw kind.notChangedByYou();
        }
    }

    /** Refuses who does not have a role. */
    void checkIs(Role role, String remedy) {
        if (!asker().is(role)) {
            throw new NotAllowed(remedy);
        }
    }

    /**
     * The same as {@link #lists} as a condition on the column {@code owner} in SQL. Ids of accounts are made here and of hexadecimal
     * digits alone, so they may stand in it.
     */
    String listed() {
        Asker asker = asker();
        String common = asker.isKnown() ? "owner is null" : "false";
        return asker.account()
                .map((UUID account) -> "(" + common + " or owner = uuid '" + account + "')")
                .orElse(common);
    }

    /** Does work of the service's own, which belongs to nobody. */
    void asService(Runnable work) {
        askers.as(Asker.LOCAL, () -> {
            work.run();
            return true;
        });
    }
}
