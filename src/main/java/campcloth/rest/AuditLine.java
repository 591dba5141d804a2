package campcloth.rest;

import campcloth.access.AuditEntry;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A line of the audit log. */
@Schema(name = "AuditLine")
record AuditLine(
        @NotNull Instant at,

        @Schema(description = "name of the account; left out where nobody was logged in") @Nullable
        String account,

        @Schema(example = "changed") @NotNull String action,
        @Schema(example = "rules") @NotNull String thingKind,
        @NotNull String thingId,
        @NotNull String what) {

    static AuditLine of(AuditEntry entry) {
        return new AuditLine(
                entry.at(),
                entry.account().orElse(null),
                entry.action(),
                entry.thingKind(),
                entry.thingId(),
                entry.what());
    }
}
