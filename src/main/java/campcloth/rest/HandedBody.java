package campcloth.rest;

import campcloth.access.AccountKeeping;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;

/** An account with a password that was just made for it. */
@Schema(name = "HandedAccount")
record HandedBody(
        @NotNull AccountBody account,

        @Schema(
                example = "k3Jw0cQ8mB2tZyXn5RfA",
                description = "for its owner, who has to change it; shown this once and kept nowhere")
        @NotNull
        String password) {

    static HandedBody of(AccountKeeping.Handed handed) {
        return new HandedBody(AccountBody.of(handed.account()), handed.oneTimePassword());
    }

    /** Passwords do not belong into logs. */
    @Override
    public String toString() {
        return "HandedBody[" + account.name() + "]";
    }
}
