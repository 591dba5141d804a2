package campcloth.access;

import java.util.Optional;
import java.util.UUID;

/**
 * To whom a kept thing belongs, and by which link it is shared.
 *
 * @param owner the account it belongs to; none where it is common: shared catalogue, common events, all of a local service
 * @param key the key of its link while it is shared
 */
public record Holding(Optional<UUID> owner, Optional<ShareKey> key) {

    /** Belongs to nobody and is shared by no link. */
    public static final Holding COMMON = new Holding(Optional.empty(), Optional.empty());

    /**
     * What an asker makes: its own and private; common where the asker has no account.
     *
     * @throws NotAllowed where the asker may keep nothing
     */
    public static Holding madeBy(Asker asker) {
        if (!asker.is(Role.MAKER)) {
            throw new NotAllowed("Only makers keep things of their own. Ask an administrator for that role.");
        }
        return new Holding(asker.account(), Optional.empty());
    }

    /** Whether it is the asker's own. Of what is common, nobody's. */
    public boolean isOwn(Asker asker) {
        return owner.isPresent() && owner.equals(asker.account());
    }

    /** Own, common (to who is logged in), or shared by a link that the asker shows. What may not be read is as though it were not there. */
    public boolean mayRead(Asker asker) {
        return isListedFor(asker) || isShownTo(asker);
    }

    /** Own or common: what stands in the asker's lists. What is only shared with them does not. */
    public boolean isListedFor(Asker asker) {
        return isOwn(asker) || (owner.isEmpty() && asker.isKnown());
    }

    /**
     * Own, or common and the asker keeps such things. A link lets nobody change anything.
     *
     * @param keeper the role that keeps what is common of this kind
     */
    public boolean mayChange(Asker asker, Role keeper) {
        return isOwn(asker) || (owner.isEmpty() && asker.is(keeper));
    }

    /** Whether the asker may change an event's rules, and nothing but them, because its link was given to a marshal. */
    public boolean mayChangeRules(Asker asker) {
        return mayChange(asker, Role.MARSHAL) || (asker.is(Role.MARSHAL) && isShownTo(asker));
    }

    private boolean isShownTo(Asker asker) {
        return key.isPresent() && asker.keys().contains(key.get());
    }
}
