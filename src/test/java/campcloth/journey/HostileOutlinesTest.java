package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Outlines and cloth that cannot be laid are refused with the path of the piece and what to do about it. */
@WholeService
class HostileOutlinesTest {

    private static final String SQUARE = "[[0,0],[10,0],[10,10],[0,10]]";

    @LocalServerPort
    private int port;

    private BareCalls layouts;

    @BeforeEach
    void find() {
        layouts = new BareCalls(port, "/api/layouts");
    }

    @ParameterizedTest
    @CsvSource({
        "'[[0,0],[10,10],[10,0],[0,10]]', 'pieces[1].outlineCm', order",
        "'[[0,0],[10,0],[20,0]]', 'pieces[1].outlineCm', corners",
        "'[[0,0],[\"NaN\",0],[10,10]]', 'pieces[1].outlineCm[1]', finite",
        "'[[0,0],[\"Infinity\",0],[10,10]]', 'pieces[1].outlineCm[1]', finite"
    })
    void outlinesThatEncloseNothing(String outline, String field, String remedy) {
        assertThat(layouts.refused(body("", outline, ""), 422, field)).contains("two", remedy);
    }

    @Test
    void aPieceWiderThanTheCloth() {
        assertThat(layouts.refused(body("", "[[0,0],[150,0],[150,10],[0,10]]", ""), 422, "pieces[1].outlineCm"))
                .contains("two", "take wider cloth or divide the piece by a seam");
    }

    @Test
    void moreCornersThanAreTaken() {
        assertThat(layouts.refused(body("", star(10_001), ""), 422, "pieces[1].outlineCm"))
                .contains("two", "give at most 10000");
    }

    @Test
    void anOutlineOfTenThousandCornersIsLaid() {
        assertThat(layouts.answer(body("", star(10_000), "")).path("lengthCm").asDouble())
                .isBetween(100.0, 110.1);
    }

    /** A wheel with teeth: no edge crosses another. */
    private static String star(int corners) {
        return IntStream.range(0, corners)
                .mapToObj(i -> {
                    double turn = 2 * Math.PI * i / corners;
                    double radius = i % 2 == 0 ? 50 : 49.9;
                    return "[" + radius * Math.cos(turn) + "," + radius * Math.sin(turn) + "]";
                })
                .collect(Collectors.joining(",", "[", "]"));
    }

    @ParameterizedTest
    @CsvSource({
        "'\"repeatLengthCm\": 0', repeatLengthCm, give a number",
        "'\"repeatLengthCm\": -12', repeatLengthCm, give a number",
        "'\"repeatWidthCm\": \"NaN\"', repeatWidthCm, give a number",
        "'\"edgeGapCm\": -1', edgeGapCm, give a number",
        "'\"edgeGapCm\": 68', 'pieces[0].outlineCm', keep less of the edges free",
        "'\"lengthsAtHand\": [{\"lengthCm\": 0}]', 'lengthsAtHand[0].lengthCm', give a number",
        "'\"lengthsAtHand\": [{\"lengthCm\": 50, \"widthCm\": 150}]', 'lengthsAtHand[0].widthCm', width"
    })
    void clothThatIsNone(String cloth, String field, String remedy) {
        assertThat(layouts.refused(body(", " + cloth, SQUARE, ""), 422, field)).contains(remedy);
    }

    @Test
    void matchPointsThatMeetNothing() {
        assertThat(layouts.refused(
                        body(", \"repeatLengthCm\": 12", SQUARE, ", \"matchAtCm\": [0, 500]"),
                        422,
                        "pieces[1].matchAtCm"))
                .contains("two", "give a spot");
        assertThat(layouts.refused(body("", SQUARE, ", \"matchAtCm\": [0, 0]"), 422, "pieces[1].matchAtCm"))
                .contains("repeatLengthCm");
    }

    @Test
    void moreLengthsThanAreTaken() {
        String many = "{\"lengthCm\": 50},".repeat(20) + "{\"lengthCm\": 50}";
        assertThat(layouts.refused(body(", \"lengthsAtHand\": [" + many + "]", SQUARE, ""), 400, "lengthsAtHand"))
                .contains("from 0 to 20");
    }

    private static String body(String cloth, String outline, String match) {
        return "{\"widthCm\": 140, \"seconds\": 0.05" + cloth + ", \"pieces\": [{\"name\": \"one\", \"outlineCm\": "
                + SQUARE + "}, {\"name\": \"two\", \"outlineCm\": " + outline + match + "}]}";
    }
}
