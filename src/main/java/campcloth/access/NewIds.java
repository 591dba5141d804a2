package campcloth.access;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;

/**
 * Gives ids to what is made. They are random, but for work that may have to be done again: there they follow from a seed, so that
 * the second time finds what the first time made, and makes nothing twice.
 */
public final class NewIds {

    private static final int BYTES = 16;

    private final ThreadLocal<Optional<Naming>> naming = ThreadLocal.withInitial(Optional::empty);
    private final ThreadLocal<Optional<Turn>> turn = ThreadLocal.withInitial(Optional::empty);

    /** The id of the next thing of a kind that this thread makes. */
    public UUID next(String kind) {
        return naming.get().map(names -> names.next(kind)).orElseGet(UUID::randomUUID);
    }

    /** Whether what is made now may be there already, from the first time the same work was done. */
    public boolean mayBeThere() {
        return naming.get().isPresent();
    }

    /** What this thread works on under a claim; whoever commits asks first whether the claim still holds. */
    public Optional<Turn> turn() {
        return turn.get();
    }

    /** Does work under a claim, with ids that follow from its seed. */
    public <T> T under(Turn work, Supplier<T> doing) {
        Optional<Turn> before = turn.get();
        turn.set(Optional.of(work));
        try {
            return under(work.seed(), doing);
        } finally {
            if (before.isPresent()) {
                turn.set(before);
            } else {
                turn.remove();
            }
        }
    }

    /** Does work whose ids follow from a seed; the same work on the same seed gets the same ids in the same order. */
    public <T> T under(UUID seed, Supplier<T> work) {
        Optional<Naming> before = naming.get();
        naming.set(Optional.of(new Naming(seed)));
        try {
            return work.get();
        } finally {
            if (before.isPresent()) {
                naming.set(before);
            } else {
                naming.remove();
            }
        }
    }

    /** Counts what was made under a seed. */
    private static final class Naming {

        private final UUID seed;
        private final Map<String, Integer> made = new HashMap<>();

        Naming(UUID seed) {
            this.seed = seed;
        }

        UUID next(String kind) {
            int number = made.merge(kind, 1, Integer::sum);
            return named(seed, kind + " " + number);
        }
    }

    /** A name-based UUID of version 8 from SHA-256 (RFC 9562, 5.8; its appendix B.2 makes one so). */
    private static UUID named(UUID space, String name) {
        ByteBuffer told = ByteBuffer.allocate(BYTES);
        told.putLong(space.getMostSignificantBits()).putLong(space.getLeastSignificantBits());
        MessageDigest digest = sha256();
        digest.update(told.array());
        ByteBuffer hash = ByteBuffer.wrap(digest.digest(name.getBytes(StandardCharsets.UTF_8)));
        long high = (hash.getLong() & 0xffff_ffff_ffff_0fffL) | 0x8000L;
        long low = (hash.getLong() & 0x3fff_ffff_ffff_ffffL) | 0x8000_0000_0000_0000L;
        return new UUID(high, low);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }
}
