package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.event.Activity;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.figure.PictureRules;
import campcloth.figure.Shown;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class CourseDrawingTest {

    private static final String HOSTILE = "<script>alert(1)</script>\"' & \u202e\u0007]]> <!-- \ud800 camp";

    private static final Course DAY = CourseTest.course(
            new Spell("noon march", 4, 25, 50, 1.5, Sun.FULL, Activity.WALKING, Optional.empty()),
            new Spell("watch", 3, 9, 80, 3, Sun.NONE, Activity.STANDING, Optional.empty()),
            new Spell(
                    "evening fireside",
                    3,
                    6,
                    80,
                    1.5,
                    Sun.NONE,
                    Activity.SEATED,
                    Optional.of(new OpenFire(FireRole.SEATED, Optional.of(2.0), Optional.empty()))),
            new Spell("night", 7, 3, 90, 1, Sun.NONE, Activity.SLEEPING, Optional.empty()));

    @Test
    void itIsAWellFormedPictureThatSaysTheSameInWords() throws Exception {
        String svg = CourseDrawing.svg(DAY, "The day in fulled wool");
        Document document = parsed(svg);
        assertThat(document.getDocumentElement().getNodeName()).isEqualTo("svg");
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("The day in fulled wool");
        String words = document.getElementsByTagName("desc").item(0).getTextContent();
        assertThat(words).contains("too cold", "1 noon march", "Coldest quarter-hour", "bedding");
        assertThat(svg).contains("too warm", "not computed", "hours after the begin", "stroke-dasharray");
        PictureRules.read(Shown.kept("course", svg), "wide").wordsKeepTheirPlaces();
        String narrow = Shown.kept("course-narrow", CourseDrawing.narrowSvg(DAY, "The day in fulled wool"));
        PictureRules picture =
                PictureRules.read(narrow, "narrow").readableOnAPhone().wordsKeepTheirPlaces();
        assertThat(picture.description()).isEqualTo(words);
        assertThat(picture.words()).contains("1 noon march: 4 h", "too warm", "is needed to feel neutral");
    }

    @Test
    void hostileNamesStayWords() throws Exception {
        Spell spell = new Spell(HOSTILE, 2, 15, 70, 2, Sun.NONE, Activity.STANDING, Optional.empty());
        String svg = CourseDrawing.svg(CourseTest.course(spell), HOSTILE);
        for (String hostile : PictureRules.HOSTILE) {
            String name = hostile.substring(0, Math.min(100, hostile.length()));
            Course named =
                    CourseTest.course(new Spell(name, 2, 15, 70, 2, Sun.NONE, Activity.STANDING, Optional.empty()));
            PictureRules.read(CourseDrawing.svg(named, hostile), name).wordsKeepTheirPlaces();
            PictureRules.read(CourseDrawing.narrowSvg(named, hostile), name).wordsKeepTheirPlaces();
        }
        Document document = parsed(svg);
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .contains("<script>alert(1)</script>");
        assertThat(svg).doesNotContain("<script", "\u202e", "\u0007", "<!--");
    }

    @Test
    void whatCannotBeComputedIsDrawnAllTheSame() throws Exception {
        Spell gale = new Spell("gale", 0.1, 30, 70, 39, Sun.NONE, Activity.STANDING, Optional.empty());
        parsed(CourseDrawing.svg(CourseTest.course(gale), "x"));
        PictureRules.read(CourseDrawing.narrowSvg(CourseTest.course(gale), "x"), "gale")
                .readableOnAPhone()
                .wordsKeepTheirPlaces();
        Spell[] many = new Spell[24];
        for (int i = 0; i < many.length; i++) {
            many[i] = new Spell("n".repeat(100), 72, i - 10, 70, 2, Sun.NONE, Activity.STANDING, Optional.empty());
        }
        String svg = CourseDrawing.svg(CourseTest.course(many), "y".repeat(200));
        parsed(svg);
        assertThat(svg.length()).isLessThan(400_000);
        String narrow = CourseDrawing.narrowSvg(CourseTest.course(many), "y".repeat(200));
        PictureRules.read(narrow, "many").readableOnAPhone().wordsKeepTheirPlaces();
    }

    @Test
    void theTableSaysOfEverySpellWhatTheWholeSaysOfAll() {
        List<CourseTable.Row> rows = CourseTable.rows(DAY);
        assertThat(rows).extracting(CourseTable.Row::number).containsExactly(1, 2, 3, 4);
        assertThat(rows)
                .extracting(CourseTable.Row::name)
                .containsExactly("noon march", "watch", "evening fireside", "night");
        assertThat(sum(rows, CourseTable.Row::hours)).isCloseTo(DAY.hours(), within(1e-9));
        assertThat(sum(rows, CourseTable.Row::hoursTooCold)).isCloseTo(DAY.hoursTooCold(), within(1e-9));
        assertThat(sum(rows, CourseTable.Row::hoursTooWarm)).isCloseTo(DAY.hoursTooWarm(), within(1e-9));
        assertThat(sum(rows, CourseTable.Row::hoursComfortable)).isCloseTo(DAY.hoursInComfort(), within(1e-9));
        assertThat(sum(rows, CourseTable.Row::hoursNotComputed)).isCloseTo(DAY.hoursNotComputed(), within(1e-9));
        assertThat(rows.get(2).worst()).contains(CourseWords.words(DAY.coldest().orElseThrow()));
        assertThat(rows.get(0).worst()).contains(CourseWords.words(DAY.warmest().orElseThrow()));
        assertThat(rows.get(3).worst()).isEmpty();
        assertThat(rows.get(3).sentence()).contains("bedding");
    }

    private static double sum(List<CourseTable.Row> rows, ToDoubleFunction<CourseTable.Row> hours) {
        return rows.stream().mapToDouble(hours).sum();
    }

    private static Document parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }
}
