package campcloth.rest;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.Role;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** An account. */
@Schema(name = "Account")
record AccountBody(
        @Schema(description = "told, never sent", accessMode = Schema.AccessMode.READ_ONLY) @Nullable
        String id,

        @Schema(
                example = "nora.weaver",
                description =
                        "3 to 40 letters a-z, digits, points, underlines or hyphens; left out in a change, which keeps it")
        @Nullable
        String name,

        @Schema(description = "at least one") @NotNull List<@NotNull Role> roles,

        @Schema(description = "nobody can log in with it") @Nullable
        Boolean disabled,

        @Schema(description = "told, never sent: its password has to be changed at the next login") @Nullable
        Boolean oneTimePassword,

        @Schema(description = "told, never sent") @Nullable Instant madeAt) {

    static AccountBody of(Account account) {
        return new AccountBody(
                account.id().toString(),
                account.name().text(),
                account.roles().stream().sorted().toList(),
                account.disabled(),
                account.oneTime(),
                account.madeAt());
    }

    AccountName accountName() {
        return new AccountName(Objects.requireNonNullElse(name, ""));
    }

    Set<Role> told() {
        return Set.copyOf(roles);
    }

    boolean isDisabled() {
        return Boolean.TRUE.equals(disabled);
    }
}
