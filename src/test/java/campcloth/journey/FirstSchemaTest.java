package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.store.StoredSamples;
import campcloth.store.postgres.PostgresForTests;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.sql.Connection;
import java.util.Map;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.MapPropertySource;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ContextConfiguration;

/** A database of the first schema that held data is started on as it is, and is worked with from then on. */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT)
@ContextConfiguration(initializers = FirstSchemaTest.OldDatabase.class)
@DirtiesContext
class FirstSchemaTest {

    @LocalServerPort
    private int port;

    private final HttpClient http = HttpClient.newHttpClient();

    static class OldDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {

        @Override
        public void initialize(ConfigurableApplicationContext context) {
            PostgresForTests.Database database = PostgresForTests.fresh();
            Flyway.configure()
                    .dataSource(database.url(), database.user(), database.password())
                    .target("2")
                    .load()
                    .migrate();
            try (Connection connection = database.connect()) {
                StoredSamples.fill(connection, 2);
            } catch (Exception failure) {
                throw new IllegalStateException(failure);
            }
            context.getEnvironment()
                    .getPropertySources()
                    .addFirst(new MapPropertySource(
                            "the old database",
                            Map.of(
                                    "spring.datasource.url", database.url(),
                                    "spring.datasource.username", database.user(),
                                    "spring.datasource.password", database.password(),
                                    "campcloth.demo", "false")));
        }
    }

    @Test
    void itIsListedRankedItsRulesHaveAHistoryAndItCanBeChanged() throws Exception {
        assertThat(get("/api/cloths?text=remnant").body()).contains(StoredSamples.CLOTH);
        HttpResponse<String> event = get("/api/events/" + StoredSamples.EVENT);
        assertThat(event.statusCode()).isEqualTo(200);
        assertThat(get("/api/events/" + StoredSamples.EVENT + "/rules").body())
                .contains("No more than a third synthetic");
        assertThat(get("/api/events/" + StoredSamples.EVENT + "/rules/versions").body())
                .contains("\"version\":7");
        assertThat(get("/api/cutting-plans/" + StoredSamples.PLAN).statusCode()).isEqualTo(200);
        HttpResponse<String> ranking = send(
                "POST",
                "/api/advice",
                "{\"eventId\": \"" + StoredSamples.EVENT
                        + "\", \"garment\": {\"design\": \"tunic\"}, \"cloths\": {\"ids\": [\"" + StoredSamples.CLOTH
                        + "\", \"linen-plain-185\"]}}",
                "");
        assertThat(ranking.statusCode()).as(ranking.body()).isEqualTo(200);
        assertThat(ranking.body()).contains(StoredSamples.CLOTH, "linen-plain-185");
        String tag = event.headers().firstValue("ETag").orElseThrow();
        HttpResponse<String> changed = send(
                "PUT",
                "/api/events/" + StoredSamples.EVENT,
                "{\"name\": \"Wendlow river camp\", \"season\": \"SUMMER\"}",
                tag);
        assertThat(changed.statusCode()).as(changed.body()).isEqualTo(200);
        assertThat(get("/api/events/" + StoredSamples.EVENT + "/rules?version=7")
                        .body())
                .contains("No more than a third synthetic");
    }

    private HttpResponse<String> get(String path) throws Exception {
        return send("GET", path, "", "");
    }

    private HttpResponse<String> send(String method, String path, String body, String ifMatch) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Content-Type", "application/json")
                .method(
                        method,
                        body.isEmpty()
                                ? HttpRequest.BodyPublishers.noBody()
                                : HttpRequest.BodyPublishers.ofString(body));
        if (!ifMatch.isEmpty()) {
            request.header("If-Match", ifMatch);
        }
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }
}
