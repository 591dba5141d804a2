package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.store.postgres.PostgresForTests;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.springframework.context.ConfigurableApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Two whole programs over one PostgreSQL: a cloth that is edited at one ranks by its new figures at the other. */
class TwoProgramsTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final int EDITS = 20;

    private final PostgresForTests.Database database = PostgresForTests.fresh();
    private final HttpClient http = HttpClient.newHttpClient();

    @Test
    void whatIsEditedAtOneRanksByItsNewFiguresAtTheOther() throws Exception {
        try (ConfigurableApplicationContext one = ProgramHere.over(database);
                ConfigurableApplicationContext other = ProgramHere.over(database)) {
            HttpResponse<String> made = send(one, "POST", "/api/cloths", cloth(150), "");
            assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
            String id = JSON.readTree(made.body()).path("id").asString();
            String version = made.headers().firstValue("ETag").orElseThrow();
            double kgOfOneGsm = rankedKg(other, id) / 150;
            assertThat(kgOfOneGsm).isPositive();
            version = edits(one, other, id, version, kgOfOneGsm, 160, "told");
            try (Connection connection = database.connect();
                    Statement sql = connection.createStatement()) {
                sql.execute("alter table cloth_clock disable trigger cloth_clock_moved");
                sql.execute("select pg_terminate_backend(pid) from pg_stat_activity where datname = current_database()"
                        + " and query ilike 'listen%'");
            }
            edits(one, other, id, version, kgOfOneGsm, 300, "with the channel cut and nothing said on it");
        }
    }

    /** Each edit is looked at once, at the other program, as soon as it was acknowledged. */
    private String edits(
            ConfigurableApplicationContext one,
            ConfigurableApplicationContext other,
            String id,
            String first,
            double kgOfOneGsm,
            int gsm,
            String how)
            throws IOException, InterruptedException {
        String version = first;
        long longest = 0;
        for (int edit = 0; edit < EDITS; edit++) {
            HttpResponse<String> edited = send(one, "PUT", "/api/cloths/" + id, cloth(gsm + edit), version);
            assertThat(edited.statusCode()).as(edited.body()).isEqualTo(200);
            version = edited.headers().firstValue("ETag").orElseThrow();
            long begun = System.nanoTime();
            double kg = rankedKg(other, id);
            longest = Math.max(longest, System.nanoTime() - begun);
            assertThat(kg).as("edit %d, %s", edit, how).isCloseTo(kgOfOneGsm * (gsm + edit), within(0.002));
        }
        System.out.printf(
                "two programs, %s: each of %d edits counted in the other's next ranking, which took %d ms at most%n",
                how, EDITS, longest / 1_000_000);
        return version;
    }

    /** The mass of the garment that the ranking tells, kg. */
    private double rankedKg(ConfigurableApplicationContext program, String id)
            throws IOException, InterruptedException {
        String asked =
                "{\"event\": {\"season\": \"SUMMER\"}, \"garment\": {\"design\": \"tunic\", \"wearer\": {\"chestCm\": 98}},"
                        + " \"cloths\": {\"ids\": [\"" + id + "\"]}}";
        HttpResponse<String> answer = send(program, "POST", "/api/advice", asked, "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        for (JsonNode criterion : JSON.readTree(answer.body()).at("/ranking/0/criteria")) {
            if (criterion.path("criterion").asString().equals("weight")) {
                return criterion.path("value").asDouble();
            }
        }
        throw new AssertionError("no weight in " + answer.body());
    }

    private static String cloth(int gsm) {
        return "{\"name\": \"Wendlow linen\", \"blend\": [{\"fibre\": \"flax\", \"percent\": 100}], \"weightGsm\": "
                + gsm + "}";
    }

    private HttpResponse<String> send(
            ConfigurableApplicationContext program, String method, String path, String body, String ifMatch)
            throws IOException, InterruptedException {
        URI uri = URI.create("http://127.0.0.1:" + ProgramHere.port(program) + path);
        HttpRequest.Builder request = HttpRequest.newBuilder(uri)
                .header("Content-Type", "application/json")
                .method(method, HttpRequest.BodyPublishers.ofString(body));
        if (!ifMatch.isEmpty()) {
            request.header("If-Match", ifMatch);
        }
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }
}
