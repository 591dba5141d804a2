package campcloth.store;

import java.util.Optional;
import java.util.UUID;

/** Ids as they stand in addresses. */
final class Ids {

    private static final int LENGTH = 36;

    private Ids() {}

    /** The id, or nothing where the text is none: what has no id of ours is not there. */
    static Optional<UUID> uuid(String text) {
        if (text.length() != LENGTH) {
            return Optional.empty();
        }
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }
}
