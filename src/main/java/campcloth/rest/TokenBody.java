package campcloth.rest;

import campcloth.access.AccessToken;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A token, without the token itself. */
@Schema(name = "Token")
record TokenBody(
        @NotNull String id,
        @Schema(example = "a script") @NotNull String name,
        @NotNull Instant madeAt,
        @NotNull Instant expiresAt,

        @Schema(description = "within ten minutes; left out where it never was") @Nullable
        Instant lastUsedAt) {

    static TokenBody of(AccessToken token) {
        return new TokenBody(
                token.id().toString(),
                token.name(),
                token.madeAt(),
                token.expiresAt(),
                token.lastUsedAt().orElse(null));
    }
}
