package campcloth.access;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * What is known of a token by which a program asks for an account; the token itself is shown once and never kept.
 *
 * @param name what its owner calls it
 */
public record AccessToken(UUID id, String name, Instant madeAt, Instant expiresAt, Optional<Instant> lastUsedAt) {

    public boolean isOver(Instant now) {
        return !now.isBefore(expiresAt);
    }
}
