package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.layout.Layout;
import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Placement;
import campcloth.layout.Point;
import campcloth.layout.Strip;
import campcloth.layout.Verification;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** The packing asked over HTTP. */
@WholeService
class BareLayoutTest {

    private static final String SQUARE = "[[0,0],[10,0],[10,10],[0,10]]";

    @LocalServerPort
    private int port;

    private BareCalls layouts;

    @BeforeEach
    void find() {
        layouts = new BareCalls(port, "/api/layouts");
    }

    @Test
    void fourHalvesOfTheWidthTakeTwiceTheirLength() {
        JsonNode answer = layouts.answer(body("[[0,0],[70,0],[70,95],[0,95]]", 4));
        assertThat(answer.path("lengthCm").asDouble()).isEqualTo(190, within(1e-6));
        assertThat(answer.path("lowerBoundCm").asDouble()).isEqualTo(190, within(1e-6));
        assertThat(answer.path("usedPercent").asDouble()).isEqualTo(100, within(1e-6));
    }

    @Test
    void theLayoutAnsweredHoldsInEveryDigit() {
        JsonNode answer = layouts.answer(Bodies.LAYOUT);
        List<Piece> pieces = List.of(
                new Piece("front", Outline.rectangle(70, 95), 2, true, false, false),
                new Piece(
                        "gore",
                        Outline.of(List.of(new Point(0, 0), new Point(30, 0), new Point(15, 60))),
                        4,
                        true,
                        false,
                        false));
        Layout layout = new Layout(
                Strip.ofWidth(140),
                pieces,
                answer.path("lengthCm").asDouble(),
                answer.path("lowerBoundCm").asDouble(),
                answer.path("usedPercent").asDouble(),
                answer.path("placements")
                        .valueStream()
                        .map(BareLayoutTest::placement)
                        .toList());
        assertThat(Verification.faults(layout)).isEmpty();
    }

    @Test
    void theSameRequestGivesTheSameLayout() {
        assertThat(layouts.answer(Bodies.LAYOUT)).isEqualTo(layouts.answer(Bodies.LAYOUT));
    }

    @Test
    void aConcaveOutlineMayRunEitherWayRound() {
        String hook = "[[0,0],[30,0],[30,10],[10,10],[10,40],[0,40]]";
        String backwards = "[[0,40],[10,40],[10,10],[30,10],[30,0],[0,0]]";
        assertThat(layouts.answer(body(hook, 3)).path("usedPercent"))
                .isEqualTo(layouts.answer(body(backwards, 3)).path("usedPercent"));
    }

    @ParameterizedTest
    @CsvSource({
        "'[[0,0],[10,10],[10,0],[0,10]]', 'pieces[0].outlineCm', meets",
        "'[[0,0],[10,0],[20,0]]', 'pieces[0].outlineCm', corners",
        "'[[0,0],[10,0]]', 'pieces[0].outlineCm', three corners",
        "'[]', 'pieces[0].outlineCm', three corners",
        "'[[0,0],[150,0],[150,10],[0,10]]', 'pieces[0].outlineCm', wider cloth",
        "'[[0,0],[1e7,0],[10,10]]', 'pieces[0].outlineCm[1]', 100000",
        "'[[0,0],[10],[10,10]]', 'pieces[0].outlineCm[1]', two numbers",
        "'[[0,0],null,[10,10]]', 'pieces[0].outlineCm[1]', two numbers",
        "'[[0,0],[10,null],[10,10]]', 'pieces[0].outlineCm[1]', two numbers",
        "'[[0,0],[10,0,5],[10,10]]', 'pieces[0].outlineCm[1]', two numbers"
    })
    void anOutlineThatIsNoneIsRefusedWithTheRemedy(String outline, String field, String words) {
        assertThat(layouts.refused(body(outline, 1), 422, field)).contains(words);
    }

    @Test
    void whatIsNoNumberIsRefused() {
        layouts.refused(body("[[0,0],[\"NaN\",0],[10,10]]", 1), 422, "pieces[0].outlineCm[1]");
        assertThat(layouts.post(body("[[0,0],[NaN,0],[10,10]]", 1)).statusCode())
                .isEqualTo(400);
    }

    @Test
    void tooManyPointsPiecesOrSecondsAreRefused() {
        String round = IntStream.rangeClosed(0, 10_000)
                .mapToObj(i -> "[" + i % 100 + "," + i + "]")
                .collect(Collectors.joining(",", "[", "]"));
        assertThat(layouts.refused(body(round, 1), 422, "pieces[0].outlineCm")).contains("at most 10000");
        layouts.refused(body(SQUARE, 201), 422, "pieces[0].count");
        String two = "{\"name\": \"a\", \"outlineCm\": " + SQUARE + ", \"count\": 150}";
        String three = "{\"widthCm\": 140, \"pieces\": [" + two + "," + two + "]}";
        assertThat(layouts.refused(three, 422, "pieces")).contains("several layouts");
        String one = "{\"name\": \"a\", \"outlineCm\": " + SQUARE + "}";
        String many = IntStream.range(0, 201).mapToObj(i -> one).collect(Collectors.joining(","));
        layouts.refused("{\"widthCm\": 140, \"pieces\": [" + many + "]}", 400, "pieces");
        layouts.refused(Bodies.LAYOUT.replace("0.05", "30.1"), 422, "seconds");
        layouts.refused(Bodies.LAYOUT.replace("\"widthCm\": 140", "\"widthCm\": 0"), 422, "widthCm");
    }

    private static String body(String outline, int count) {
        return "{\"widthCm\": 140, \"seconds\": 0.05, \"pieces\": [{\"name\": \"one\", \"outlineCm\": " + outline
                + ", \"count\": " + count + ", \"turnable\": true}]}";
    }

    private static Placement placement(JsonNode told) {
        return new Placement(
                told.path("piece").asString(),
                told.path("copy").asInt(),
                told.path("xCm").asDouble(),
                told.path("yCm").asDouble(),
                told.path("turned").asBoolean(),
                told.path("mirrored").asBoolean());
    }
}
