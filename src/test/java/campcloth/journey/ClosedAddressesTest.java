package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Role;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalManagementPort;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Addresses beside those of the tables: what is open to strangers, and that no way of writing an address opens what is closed. */
@HostedService
class ClosedAddressesTest {

    private static final List<String> CLOSED_TO_STRANGERS = List.of(
            "/", "/cloths", "/events", "/sheets", "/account", "/api/cloths", "/api/events", "/api/export", "/api/jobs");
    private static final List<String> CLOSED_TO_MAKERS =
            List.of("/accounts", "/audit", "/cloths/import", "/api/accounts", "/api/audit", "/api/jobs/lists");
    private static final List<String> METHODS =
            List.of("HEAD", "OPTIONS", "TRACE", "PUT", "PATCH", "DELETE", "POST", "BREW");
    private static final Pattern LOOK = Pattern.compile("href=\"(/look/[^\"]+)\"");

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @LocalManagementPort
    private int management;

    @Autowired
    private HostedAccounts accounts;

    /** The same address as a client might write it that looks for a way round. */
    private static List<String> written(String path) {
        List<String> ways = new ArrayList<>(List.of(
                path,
                path + "/",
                path + ";jsessionid=1",
                path + "%2F",
                path + "%20",
                path + "%00",
                path + ".json",
                path + "?key=q7dXK0pJ3sVbN1yTgR5mAw",
                path + "/?key=q7dXK0pJ3sVbN1yTgR5mAw",
                "/" + path,
                "/." + path,
                "/login/.." + path,
                "/look/.." + path,
                "/look/..;" + path,
                "/look/%2e%2e" + path,
                "/look/..%2f" + path.substring(1),
                "/look;" + path,
                "/v3/api-docs/.." + path,
                "/error" + path,
                path.toUpperCase(Locale.ROOT)));
        if (path.length() > 1) {
            ways.add("/%" + Integer.toHexString(path.charAt(1)) + path.substring(2));
            ways.add("/" + path.substring(1).replace("/", "%2F"));
            ways.add("/" + path.substring(1).replace("/", "//"));
            ways.add("/" + path.substring(1).replace("/", "/./"));
            ways.add("/" + path.substring(1).replace("/", ";x=1/"));
        }
        return ways;
    }

    @Test
    void noWayOfWritingAnAddressOpensItToStrangers() {
        List<String> wrong = new ArrayList<>();
        List<String> all = new ArrayList<>(CLOSED_TO_STRANGERS);
        all.addAll(CLOSED_TO_MAKERS);
        for (String path : all) {
            for (String way : written(path)) {
                int status = answer("GET", port, way, "").statusCode();
                if (status < 300 || status >= 500) {
                    wrong.add(way + ": " + status);
                }
            }
        }
        // these are other addresses, open to everybody by themselves
        wrong.removeIf(one -> one.startsWith("/look;/:"));
        assertThat(wrong).isEmpty();
    }

    @Test
    void norToMakersWhatIsKeptByOthers() {
        List<String> wrong = new ArrayList<>();
        Browsing maker = Browsing.as(port, accounts.otherMaker().name().text());
        String bearer = accounts.bearer(accounts.otherMaker());
        for (String path : CLOSED_TO_MAKERS) {
            for (String way : written(path)) {
                int paged = maker.get(way).statusCode();
                int called = answer("GET", port, way, bearer).statusCode();
                if (paged < 300 || paged >= 500 || called < 300 || called >= 500) {
                    wrong.add(way + ": " + paged + " in a browser, " + called + " with a token");
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void noMethodOpensItEither() {
        List<String> wrong = new ArrayList<>();
        List<String> all = new ArrayList<>(CLOSED_TO_STRANGERS);
        all.addAll(CLOSED_TO_MAKERS);
        for (String path : all) {
            for (String method : METHODS) {
                int status = answer(method, port, path, "").statusCode();
                if (status < 300 || status >= 500) {
                    wrong.add(method + " " + path + ": " + status);
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** Some frameworks take another method from a header or a field; this one does not. */
    @Test
    void aMethodIsTheOneThatIsSent() {
        String bearer = accounts.bearer(Role.ADMINISTRATOR);
        for (String path : List.of("/api/tokens/1", "/api/events/1")) {
            HttpRequest request = HttpRequest.newBuilder(
                            URI.create("http://localhost:" + port + path + "?_method=delete"))
                    .header("Authorization", bearer)
                    .header("X-HTTP-Method-Override", "DELETE")
                    .POST(BodyPublishers.ofString("_method=delete"))
                    .build();
            assertThat(sent(request).statusCode()).as(path).isIn(404, 405, 415);
        }
    }

    @Test
    void whatStrangersMaySee() {
        String login = answer("GET", port, "/login", "").body();
        Matcher look = LOOK.matcher(login);
        int looked = 0;
        while (look.find()) {
            assertThat(answer("GET", port, look.group(1), "").statusCode())
                    .as(look.group(1))
                    .isEqualTo(200);
            looked++;
        }
        assertThat(looked).isPositive();
        assertThat(answer("GET", port, "/v3/api-docs", "").body()).contains("\"openapi\"");
        for (String path : List.of(
                "/look",
                "/look/",
                "/look/nothing.css",
                "/webjars/",
                "/webjars/nothing.js",
                "/refused",
                "/v3",
                "/v3/nothing")) {
            assertThat(answer("GET", port, path, "").statusCode()).as(path).isIn(303, 401, 404);
        }
    }

    @Test
    void whatIsNotThereIsNeverAFailure() {
        for (String path : List.of(
                "/nothing",
                "/api/nothing",
                "/events/nothing",
                "/api/events/nothing",
                "/error",
                "/favicon.ico",
                "/robots.txt",
                "/api",
                "/login/nothing")) {
            int status = answer("GET", port, path, "").statusCode();
            assertThat(status).as(path).isIn(302, 303, 401, 404);
        }
        String bearer = accounts.bearer(Role.ADMINISTRATOR);
        for (String path : List.of("/api/nothing", "/api", "/api/cloths/%E0%A4%A", "/api/events/%00")) {
            assertThat(answer("GET", port, path.replace("%E0%A4%A", "%E0%A4"), bearer)
                            .statusCode())
                    .as(path)
                    .isIn(400, 404);
        }
    }

    @Test
    void measurementsAreOnTheirPortAlone() {
        for (String path : List.of(
                "/actuator",
                "/actuator/health",
                "/actuator/prometheus",
                "/actuator/env",
                "/actuator;x/prometheus",
                "/actuator/")) {
            assertThat(answer("GET", port, path, "").statusCode()).as(path).isIn(400, 401, 404);
        }
        for (String path : List.of(
                "/actuator/env",
                "/actuator/heapdump",
                "/actuator/shutdown",
                "/actuator/beans",
                "/actuator/loggers",
                "/api/cloths",
                "/login")) {
            assertThat(answer("GET", management, path, "").statusCode())
                    .as(path)
                    .isIn(303, 401, 404);
            assertThat(answer("POST", management, path, "").statusCode())
                    .as(path)
                    .isIn(303, 401, 403, 404, 405);
        }
    }

    private HttpResponse<String> answer(String method, int at, String path, String bearer) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://localhost:" + at + path))
                .method(method, BodyPublishers.noBody());
        if (!bearer.isEmpty()) {
            request.header("Authorization", bearer);
        }
        return sent(request.build());
    }

    private HttpResponse<String> sent(HttpRequest request) {
        try {
            return http.send(request, BodyHandlers.ofString());
        } catch (IOException failure) {
            throw new AssertionError(request.toString(), failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(request.toString(), stopped);
        }
    }
}
