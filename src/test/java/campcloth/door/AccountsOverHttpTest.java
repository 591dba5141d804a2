package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Role;
import campcloth.journey.Browsing;
import campcloth.journey.HostedAccounts;
import campcloth.journey.HostedService;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Accounts, tokens and the audit log for programs. */
@HostedService
class AccountsOverHttpTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String ACCOUNTS = "/api/accounts";

    @LocalServerPort
    private int port;

    @Autowired
    private HostedAccounts known;

    @Test
    void anAccountIsMadeChangedAndGivenAnotherPassword() {
        String name = "program-" + UUID.randomUUID().toString().substring(0, 8);
        HttpResponse<String> made = call("POST", ACCOUNTS, "{\"name\": \"" + name + "\", \"roles\": [\"MAKER\"]}", "");
        assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
        assertThat(made.headers().firstValue("Cache-Control")).hasValue("no-store");
        String address = made.headers().firstValue("Location").orElseThrow();
        String password = JSON.readTree(made.body()).path("password").asString();
        assertThat(new Browsing(port).login(name, password).statusCode()).isEqualTo(302);

        HttpResponse<String> kept = call("GET", address, "", "");
        assertThat(JSON.readTree(kept.body()).path("oneTimePassword").asBoolean())
                .isTrue();
        String etag = kept.headers().firstValue("ETag").orElseThrow();
        String change = "{\"roles\": [\"MAKER\", \"MARSHAL\"], \"disabled\": true}";
        assertThat(call("PUT", address, change, "").statusCode()).isEqualTo(428);
        HttpResponse<String> changed = call("PUT", address, change, etag);
        assertThat(changed.statusCode()).as(changed.body()).isEqualTo(200);
        assertThat(JSON.readTree(changed.body()).path("disabled").asBoolean()).isTrue();
        assertThat(call("PUT", address, change, etag).statusCode()).isEqualTo(412);
        assertThat(new Browsing(port).login(name, password).statusCode()).isEqualTo(422);

        HttpResponse<String> reset = call("POST", address + "/password", "", "");
        assertThat(JSON.readTree(reset.body()).path("password").asString()).isNotEqualTo(password);
        assertThat(call("POST", address + "/unlock", "", "").statusCode()).isEqualTo(204);
        assertThat(call("GET", "/api/audit", "", "").body())
                .contains(address.substring(address.lastIndexOf('/') + 1), "the-administrator")
                .doesNotContain(password);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{} | 400 | roles",
                "[] | 400 | ",
                "{\"name\": \"x\", \"roles\": [\"MAKER\"]} | 422 | name",
                "{\"name\": \"some name\", \"roles\": [\"MAKER\"]} | 422 | name",
                "{\"name\": \"administrator\", \"roles\": [\"MAKER\"]} | 422 | name",
                "{\"name\": \"somebody\", \"roles\": []} | 422 | roles",
                "{\"name\": \"somebody\", \"roles\": [null]} | 400 | roles",
                "{\"name\": \"somebody\", \"roles\": [\"KING\"]} | 400 | roles",
                "{\"name\": \"somebody\", \"roles\": [\"MAKER\"], \"surprise\": 1} | 400 | surprise"
            })
    void whatIsNoAccountIsRefusedByName(String body, int status, String field) {
        HttpResponse<String> answer = call("POST", ACCOUNTS, body, "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        if (field != null) {
            assertThat(JSON.readTree(answer.body()).at("/errors/0/field").asString())
                    .startsWith(field);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "GET, /api/accounts/nobody, 404",
        "GET, /api/accounts/00000000-0000-0000-0000-000000000000, 404",
        "DELETE, /api/tokens/nothing, 404",
        "GET, /api/audit?page=-1, 422",
        "GET, /api/audit?page=many, 400"
    })
    void whatIsNotThereIsNotThere(String method, String path, int status) {
        assertThat(call(method, path, "", "").statusCode()).isEqualTo(status);
    }

    @Test
    void tokensAreSeenAndRevokedByTheirOwner() {
        String bearer = known.bearer(known.account("token-keeper", Set.of(Role.MAKER)));
        HttpResponse<String> all =
                Cookies.send(Cookies.request(port, "/api/tokens").header("Authorization", bearer));
        JsonNode token = JSON.readTree(all.body()).path(0);
        assertThat(token.path("name").asString()).isEqualTo("test");
        assertThat(all.body()).doesNotContain("campcloth_");
        HttpRequest.Builder revoke = Cookies.request(
                        port, "/api/tokens/" + token.path("id").asString())
                .header("Authorization", bearer)
                .DELETE();
        assertThat(Cookies.send(revoke).statusCode()).isEqualTo(204);
        assertThat(Cookies.send(revoke).statusCode()).isEqualTo(401);
    }

    @Test
    void theDocumentSaysHowToComeIn() {
        JsonNode document = JSON.readTree(Cookies.get(port, "/v3/api-docs").body());
        assertThat(document.at("/components/securitySchemes/token/scheme").asString())
                .isEqualTo("bearer");
        assertThat(document.path("paths").propertyNames()).contains(ACCOUNTS, "/api/tokens/{id}", "/api/audit");
        for (String status : Set.of("401", "403", "429")) {
            assertThat(document.at("/paths/~1api~1labels/post/responses/" + status + "/$ref")
                            .asString())
                    .isEqualTo("#/components/responses/Problem" + status);
            assertThat(document.at("/components/responses/Problem" + status
                                    + "/content/application~1problem+json/example")
                            .isMissingNode())
                    .isFalse();
        }
    }

    @ParameterizedTest
    @CsvSource({"/events/00000000-0000-0000-0000-000000000000", "/sheets/00000000-0000-0000-0000-000000000000"})
    void aLinkThatSharesNothingIsNotThere(String path) {
        assertThat(Cookies.get(port, path + "?key=0123456789abcdefghijkl").statusCode())
                .isEqualTo(404);
        assertThat(Cookies.get(port, path + "?key=short").statusCode()).isEqualTo(303);
        assertThat(Cookies.get(port, "/plan?key=0123456789abcdefghijkl").statusCode())
                .isEqualTo(303);
        assertThat(Cookies.post(port, path + "/remove?key=0123456789abcdefghijkl", "version=0")
                        .statusCode())
                .isEqualTo(403);
    }

    private HttpResponse<String> call(String method, String path, String body, String ifMatch) {
        HttpRequest.Builder request = Cookies.request(port, path)
                .header("Authorization", known.bearer(Role.ADMINISTRATOR))
                .method(method, HttpRequest.BodyPublishers.ofString(body));
        if (!body.isEmpty()) {
            request.header("Content-Type", "application/json");
        }
        if (!ifMatch.isEmpty()) {
            request.header("If-Match", ifMatch);
        }
        return Cookies.send(request);
    }
}
