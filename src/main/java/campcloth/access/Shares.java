package campcloth.access;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;

/**
 * How kept things stand to who asks, and their links. Each method is one unit of work. What may not be read is as though it were
 * not there. To whom a thing belongs and by which link it is shared is no part of its version: each change here comes out the same
 * however often and in whichever order it is made beside others.
 */
public interface Shares {

    /** What the asker may do with it; empty where there is no such thing. */
    Optional<Standing> of(ThingKind kind, String id);

    /** Of these, the ones that the asker may change and remove. */
    Set<String> changeable(ThingKind kind, Collection<String> ids);

    /**
     * Shares it; the key is the same until it is taken back. Empty where there is no such thing.
     *
     * @throws NotAllowed where the asker may only read it
     */
    Optional<ShareKey> share(ThingKind kind, String id);

    /**
     * Takes its link back, which opens nothing from then on. Whether there is such a thing.
     *
     * @throws NotAllowed where the asker may only read it
     */
    boolean unshare(ThingKind kind, String id);

    /**
     * Makes a thing of the asker's own common. Whether there is such a thing; one that is common stays so.
     *
     * @throws NotAllowed where it is not the asker's own, or the asker does not keep what is common of this kind
     */
    boolean handOver(ThingKind kind, String id);
}
