package campcloth.rest;

import campcloth.access.Account;
import campcloth.access.AccountKeeping;
import campcloth.access.Accounts;
import campcloth.access.Mode;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The accounts of a hosted service, for administrators. */
@RestController
@RequestMapping("/api/accounts")
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
@Tag(name = "Accounts", description = "Who may log in, and what they may do; for administrators")
class AccountController {

    private final Accounts accounts;
    private final AccountKeeping keeping;

    AccountController(Accounts accounts, AccountKeeping keeping) {
        this.accounts = accounts;
        this.keeping = keeping;
    }

    @GetMapping
    @Operation(operationId = "listAccounts", summary = "All accounts by name")
    List<AccountBody> all() {
        return accounts.all().stream().map(AccountBody::of).toList();
    }

    @PostMapping
    @Operation(operationId = "makeAccount", summary = "Makes an account with a one-time password")
    @ApiResponse(responseCode = "201", description = "The account and its password", useReturnTypeSchema = true)
    ResponseEntity<HandedBody> make(@Valid @RequestBody AccountBody body) {
        AccountKeeping.Handed handed = keeping.make(body.accountName(), body.told());
        return ResponseEntity.created(
                        URI.create("/api/accounts/" + handed.account().id()))
                .cacheControl(CacheControl.noStore())
                .body(HandedBody.of(handed));
    }

    @GetMapping("/{id}")
    @Operation(operationId = "getAccount", summary = "One account")
    ResponseEntity<AccountBody> one(@PathVariable String id) {
        return answer(kept(id));
    }

    @PutMapping("/{id}")
    @Operation(
            operationId = "changeAccount",
            summary = "Changes what an account may do; If-Match must carry the ETag that was read")
    ResponseEntity<AccountBody> change(
            @PathVariable String id,
            @RequestHeader(value = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @Valid @RequestBody AccountBody body) {
        Account account = kept(id);
        long expected = Versions.expected(ifMatch, account.version());
        Accounts.Change change = accounts.change(account.id(), expected, body.told(), body.isDisabled());
        if (change instanceof Accounts.Change.Done done) {
            return answer(done.account());
        }
        if (change instanceof Accounts.Change.Stale stale) {
            throw Precondition.stale(stale.actualVersion());
        }
        throw new Missing("account", id);
    }

    @PostMapping("/{id}/unlock")
    @Operation(operationId = "unlockAccount", summary = "Ends the wait after many wrong passwords")
    @ApiResponse(responseCode = "204", description = "It may try at once")
    ResponseEntity<Void> unlock(@PathVariable String id) {
        keeping.unlock(kept(id));
        return ResponseEntity.noContent().build();
    }

    @PostMapping("/{id}/password")
    @Operation(
            operationId = "resetPassword",
            summary = "Gives an account a one-time password; its sessions and tokens end")
    ResponseEntity<HandedBody> reset(@PathVariable String id) {
        return ResponseEntity.ok().cacheControl(CacheControl.noStore()).body(HandedBody.of(keeping.reset(kept(id))));
    }

    private Account kept(String id) {
        try {
            return accounts.byId(UUID.fromString(id)).orElseThrow(() -> new Missing("account", id));
        } catch (IllegalArgumentException notAnId) {
            throw new Missing("account", id);
        }
    }

    private static ResponseEntity<AccountBody> answer(Account account) {
        return ResponseEntity.ok().eTag(Versions.etag(account.version())).body(AccountBody.of(account));
    }
}
