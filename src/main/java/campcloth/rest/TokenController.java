package campcloth.rest;

import campcloth.access.Askers;
import campcloth.access.Mode;
import campcloth.access.NotLoggedIn;
import campcloth.access.Tokens;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.UUID;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** One's own tokens. They are made on a page alone: a token that was lost shall not make others that outlive it. */
@RestController
@RequestMapping("/api/tokens")
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
@Tag(name = "Tokens", description = "Tokens of the account that asks")
class TokenController {

    private final Tokens tokens;
    private final Askers askers;

    TokenController(Tokens tokens, Askers askers) {
        this.tokens = tokens;
        this.askers = askers;
    }

    @GetMapping
    @Operation(operationId = "listTokens", summary = "Your tokens, newest first")
    List<TokenBody> all() {
        return tokens.of(me()).stream().map(TokenBody::of).toList();
    }

    @DeleteMapping("/{id}")
    @Operation(operationId = "revokeToken", summary = "Revokes a token")
    @ApiResponse(responseCode = "204", description = "It does nothing any more")
    ResponseEntity<Void> revoke(@PathVariable String id) {
        if (!tokens.revoke(me(), id)) {
            throw new Missing("token", id);
        }
        return ResponseEntity.noContent().build();
    }

    private UUID me() {
        return askers.now().account().orElseThrow(() -> new NotLoggedIn(false));
    }
}
