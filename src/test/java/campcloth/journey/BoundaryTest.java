package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.fire.Boundary;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is outside what we advise on gets no grade over HTTP, but is told whom to ask. */
@WholeService
class BoundaryTest {

    private static final JsonMapper JSON = new JsonMapper();

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @EnumSource
    void noGradeIsGivenForOneClothAtOneFire(Boundary boundary) {
        refused("/api/fire", fireFor(boundary.name()), "use", boundary);
    }

    @ParameterizedTest
    @EnumSource
    void noRankingIsGivenForAnEvent(Boundary boundary) {
        refused("/api/advice", adviceFor(boundary.name()), "garment.use", boundary);
    }

    private void refused(String path, String body, String field, Boundary boundary) {
        HttpResponse<String> response = new BareCalls(port, path).post(body);
        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(response.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
        JsonNode problem = JSON.readTree(response.body());
        assertThat(problem.path("type").asString()).isEqualTo("urn:campcloth:problem:outside");
        assertThat(problem.path("boundary").asString()).isEqualTo(boundary.name());
        assertThat(problem.path("detail").asString()).isEqualTo(boundary.because());
        assertThat(problem.path("ask").toString()).contains("fire marshal");
        assertThat(problem.path("cautions").toString()).contains("stop, drop, cover and roll", "can only be stricter");
        assertThat(problem.at("/errors/0/field").asString()).isEqualTo(field);
        assertThat(problem.propertyNames())
                .containsExactlyInAnyOrder(
                        "type", "title", "status", "detail", "instance", "errors", "boundary", "ask", "cautions");
    }

    @Test
    void ordinaryUseIsWhatIsPresumed() {
        BareCalls fire = new BareCalls(port, "/api/fire");
        assertThat(fire.answer(fireFor("ORDINARY"))).isEqualTo(fire.answer(Bodies.FIRE));
        BareCalls advice = new BareCalls(port, "/api/advice");
        String some = Bodies.ADVICE.replace("\"ids\": []", "\"ids\": [\"linen-plain-185\"]");
        assertThat(advice.answer(adviceFor("ORDINARY").replace("\"ids\": []", "\"ids\": [\"linen-plain-185\"]")))
                .isEqualTo(advice.answer(some));
    }

    @Test
    void aUseNobodyKnowsIsRefused() {
        assertThat(new BareCalls(port, "/api/fire").refused(fireFor("ACROBATICS"), 400, "use"))
                .contains("CHILDRENS_COSTUME");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PERFORMANCE", "PERFORMING", "fire performer", "PYROTECHNICS"})
    void aRoleThatMeansPerformanceIsPointedToTheUse(String role) {
        String body = Bodies.FIRE.replace("\"role\": \"SEATED\"", "\"role\": \"" + role + "\"");
        assertThat(new BareCalls(port, "/api/fire").refused(body, 400, "role"))
                .contains("say it in use", "FIRE_PERFORMANCE", "whom to ask", "SEATED");
        String event = Bodies.ADVICE.replace("\"role\": \"SEATED\"", "\"role\": \"" + role + "\"");
        assertThat(new BareCalls(port, "/api/advice").refused(event, 400, "event.spells[1].fire.role"))
                .contains("say it in use");
        assertThat(new BareCalls(port, "/api/fire")
                        .refused(Bodies.FIRE.replace("\"SEATED\"", "\"JUGGLING\""), 400, "role"))
                .doesNotContain("say it in use");
    }

    private static String fireFor(String use) {
        return Bodies.FIRE.replace("\"weave\"", "\"use\": \"" + use + "\", \"weave\"");
    }

    private static String adviceFor(String use) {
        return Bodies.ADVICE.replace("\"nextToSkin\"", "\"use\": \"" + use + "\", \"nextToSkin\"");
    }
}
