package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.ReferenceTable.Row;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The comfort models asked over HTTP; where the rows come from, and how exact they are, stands in the heads of the files. */
@WholeService
class BareComfortTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final double WM2_PER_MET = 58.2;

    @LocalServerPort
    private int port;

    private BareCalls comfort;

    @BeforeEach
    void find() {
        comfort = new BareCalls(port, "/api/comfort");
    }

    @Test
    void tableD1OfThePredictedMeanVoteIsMet() throws Exception {
        for (Row row : rows("published/pmv-table-d1.csv")) {
            JsonNode answer = comfort.answer(body(row)
                    .put("windMs", 5)
                    .put("pmvAirSpeedMs", row.number("speedMs"))
                    .toString());
            is(answer, "pmv", row.number("vote"), 0.01, row);
            is(answer, "ppdPercent", row.number("dissatisfiedPercent"), 1, row);
        }
    }

    @Test
    void theStandardEffectiveTemperaturesPublishedAreMet() throws Exception {
        for (Row row : rows("published/set.csv")) {
            JsonNode answer = comfort.answer(body(row).toString());
            is(answer, "setC", row.number("setC"), 0.3, row);
            assertThat(answer.path("coreC").asDouble())
                    .as("line %d", row.line())
                    .isBetween(36.0, 39.0);
            assertThat(answer.path("wettedness").asDouble())
                    .as("line %d", row.line())
                    .isBetween(0.0, 1.0);
        }
    }

    @Test
    void anotherProgramForTheTwoNodeBodyAgrees() throws Exception {
        for (Row row : rows("agreement/two-node.csv")) {
            JsonNode answer = comfort.answer(body(row).toString());
            is(answer, "coreC", row.number("coreC"), 0.1, row);
            is(answer, "skinC", row.number("skinC"), 0.1, row);
            is(answer, "wettedness", row.number("wettedness"), 0.02, row);
        }
    }

    @Test
    void theRequiredInsulationPublishedIsMet() throws Exception {
        for (Row row : rows("published/ireq.csv")) {
            JsonNode answer = comfort.answer(cold(row, 2).toString());
            is(answer, "ireqNeutralClo", row.number("neutralClo"), 0.1, row);
            assertThat(answer.path("ireqMinimalClo").asDouble())
                    .as("line %d", row.line())
                    .isLessThan(answer.path("ireqNeutralClo").asDouble());
        }
    }

    @Test
    void anotherProgramForTheColdAgrees() throws Exception {
        for (Row row : rows("agreement/cold.csv")) {
            JsonNode answer = comfort.answer(cold(row, row.number("basicClo"))
                    .put("walkingMs", row.number("walkingMs"))
                    .put("airPermeability", row.number("permeability"))
                    .toString());
            is(answer, "ireqNeutralClo", row.number("neutralClo"), 0.005, row);
            is(answer, "ireqMinimalClo", row.number("minimalClo"), 0.005, row);
            is(answer, "resultantClo", row.number("resultantClo"), 0.005, row);
            is(answer, "exposureLimitHours", row.number("minimalHours"), 0.02, row);
            is(answer, "exposureLimitNeutralHours", row.number("neutralHours"), 0.02, row);
        }
    }

    @Test
    void anotherProgramForTheWindChillAgrees() throws Exception {
        for (Row row : rows("agreement/wind-chill.csv")) {
            String body = JSON.createObjectNode()
                    .put("airC", row.number("airC"))
                    .put("windMs", row.number("windKmh") / 3.6)
                    .put("humidityPercent", 50)
                    .put("met", 2)
                    .put("clo", 2)
                    .toString();
            is(comfort.answer(body), "windChillC", row.number("chillC"), 0.06, row);
        }
    }

    @Test
    void whatNobodySaidIsTakenAsTheDescriptionSays() {
        String said = "{\"airC\": 5, \"windMs\": 2, \"humidityPercent\": 70, \"met\": 2, \"clo\": 1.5";
        ObjectNode bare = (ObjectNode) comfort.answer(said + "}");
        ObjectNode told = (ObjectNode) comfort.answer(
                said + ", \"radiantC\": 5, \"airPermeability\": 50, \"walkingMs\": 0, \"pmvAirSpeedMs\": 2}");
        assertThat(bare.path("presumed").toString())
                .contains("radiant", "walking", "permeability", "PMV", "10 m height");
        assertThat(told.path("presumed").size())
                .isLessThan(bare.path("presumed").size());
        bare.remove("presumed");
        told.remove("presumed");
        assertThat(bare).isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({
        "'\"airC\": 2', '\"airC\": 12', 'ireqNeutralClo ireqMinimalClo exposureLimitHours windChillC', IREQ",
        "'\"airC\": 2', '\"airC\": -3', 'setC skinC coreC wettedness heatIndexC', two-node",
        "'\"radiantC\": 3', '\"radiantC\": 70', 'setC skinC coreC wettedness', radiant",
        "'\"clo\": 2.0', '\"clo\": 0', 'setC skinC coreC wettedness', skin temperature",
        "'\"airC\": 2, \"radiantC\": 3', '\"airC\": 45, \"radiantC\": 45', 'setC skinC coreC', core temperature",
        "'\"pmvAirSpeedMs\": 0.2', '\"pmvAirSpeedMs\": 1.5', 'pmv ppdPercent', PMV",
        "'\"windMs\": 2', '\"windMs\": 20', 'resultantClo exposureLimitHours ireqNeutralClo setC', IREQ",
        "'\"windMs\": 2', '\"windMs\": 1', 'windChillC', wind chill",
        "'\"airPermeability\": 100', '\"airPermeability\": 2000', 'resultantClo exposureLimitHours', permeability"
    })
    void outsideItsRangeAModelGivesNoNumberButTheReason(String word, String other, String fields, String model) {
        assertThat(Bodies.COMFORT).contains(word);
        JsonNode answer = comfort.answer(Bodies.COMFORT.replace(word, other));
        for (String field : fields.split(" ")) {
            assertThat(answer.has(field) && answer.path(field).isNull())
                    .as(field)
                    .isTrue();
        }
        assertThat(answer.path("outOfRange").toString()).contains(model);
    }

    @ParameterizedTest
    @CsvSource({
        "airC, -61",
        "radiantC, 101",
        "windMs, -0.1",
        "humidityPercent, 100.5",
        "met, 0",
        "clo, -0.1",
        "walkingMs, -0.1",
        "airPermeability, -1",
        "pmvAirSpeedMs, 41"
    })
    void whatCannotBeIsRefusedByField(String field, double value) {
        ObjectNode body = (ObjectNode) JSON.readTree(Bodies.COMFORT);
        comfort.refused(body.put(field, value).toString(), 422, field);
    }

    private static void is(JsonNode answer, String field, double expected, double tolerance, Row row) {
        assertThat(answer.path(field).isNumber())
                .as("line %d: %s", row.line(), answer)
                .isTrue();
        assertThat(answer.path(field).asDouble())
                .as("line %d: %s", row.line(), field)
                .isCloseTo(expected, within(tolerance + 1e-4));
    }

    private static ObjectNode body(Row row) {
        return JSON.createObjectNode()
                .put("airC", row.number("airC"))
                .put("radiantC", row.number("radiantC"))
                .put("windMs", row.number("speedMs"))
                .put("humidityPercent", row.number("humidityPercent"))
                .put("met", row.number("met"))
                .put("clo", row.number("clo"));
    }

    private static ObjectNode cold(Row row, double clo) {
        return JSON.createObjectNode()
                .put("airC", row.number("airC"))
                .put("radiantC", row.number("radiantC"))
                .put("windMs", row.number("speedMs"))
                .put("humidityPercent", row.number("humidityPercent"))
                .put("met", row.number("metabolicWm2") / WM2_PER_MET)
                .put("clo", clo);
    }

    private static List<Row> rows(String file) throws Exception {
        List<Fault> faults = new ArrayList<>();
        try (InputStreamReader text = new InputStreamReader(
                Objects.requireNonNull(BareComfortTest.class.getResourceAsStream("/" + file)),
                StandardCharsets.UTF_8)) {
            List<Row> rows = ReferenceTable.read(file, text, List.of(), faults).map(row -> row);
            assertThat(faults).isEmpty();
            assertThat(rows).isNotEmpty();
            return rows;
        }
    }
}
