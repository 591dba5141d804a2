package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Seasons;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Plan sheets on paper: printed by the browser, and as PDF by the service. */
@InBrowser
class PrintTest {

    private static final List<String> SECTIONS = List.of(
            "What to buy",
            "Fire and heat",
            "Rules of the event",
            "Still to ask",
            "Before cutting",
            "Sewing",
            "At hand",
            "When it is made",
            "What was taken for granted",
            "Cutting layout",
            "End of the sheet");
    private static final String CLOTH = "wool-diamond-twill-260";
    private static final double A4_WIDTH_MM = 210;
    private static final double A4_HEIGHT_MM = 297;
    private static final double LETTER_WIDTH_MM = 215.9;
    private static final double LETTER_HEIGHT_MM = 279.4;

    @LocalServerPort
    private int port;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Events events;

    @Autowired
    private Seasons seasons;

    @ParameterizedTest
    @CsvSource({
        "season=SUMMER&design=tunic&size=M-M, linen-diamond-twill-230",
        "season=WINTER&design=gown&size=M-L, wool-vadmal-480",
        "season=AUTUMN&design=cloak&size=W-M, wool-vadmal-480",
        "season=WINTER&design=shirt&size=M-L, cotton-wool-flannel-200",
        "season=SUMMER&design=trousers&size=W-S, wool-diamond-twill-260"
    })
    void fitsBothPapers(String asked, String cloth) {
        fitsBothPapers(new SheetSamples(port).made(asked, cloth, "&count=1"));
    }

    @Test
    void manyOnStripedClothFitToo() {
        fitsBothPapers(new SheetSamples(port)
                .made("season=SUMMER&design=gown&size=M-L", CLOTH, "&count=6&repeatLengthCm=12&remnantLengthCm=90"));
    }

    @ParameterizedTest
    @CsvSource({"tunic, M-L, HAND", "gown, M-L, MACHINE", "trousers, W-M, HAND"})
    void severalWearersFitToo(String design, String size, String by) {
        List<String> sizes = List.of("W-S", "W-L", "M-S", "M-L");
        String others = IntStream.range(0, sizes.size())
                .mapToObj(i -> "&others[" + i + "].size=" + sizes.get(i) + "&others[" + i + "].name=Companion"
                        + "x".repeat(40))
                .collect(Collectors.joining());
        String path = new SheetSamples(port)
                .made(
                        "event=" + ruled(4, 120) + "&design=" + design + "&size=" + size,
                        CLOTH,
                        "&sewnBy=" + by + others);
        assertThat(fitsBothPapers(path).text()).contains(design + " 5", "Companion");
    }

    @ParameterizedTest
    @CsvSource({
        "40, 300, wool-diamond-twill-260",
        "100, 1000, wool-diamond-twill-260",
        "100, 1000, polycotton-65-35-240"
    })
    void asManyRulesAsAnEventTakesFitToo(int rules, int characters, String cloth) {
        String path =
                new SheetSamples(port).made("event=" + ruled(rules, characters) + "&design=tunic&size=M-M", cloth, "");
        assertThat(fitsBothPapers(path).text()).contains("are on the page of this sheet and on the event's page");
        try (Visitor visitor = new Visitor(Visit.PHONE, port)) {
            Page page = visitor.at(path);
            assertThat(page.getByText("Rule number " + (rules - 1) + " ").first())
                    .isVisible();
            assertThat(page.getByText("are on the page of this sheet").first()).isHidden();
            visitor.holds();
        }
    }

    @Test
    void asMuchAsCanBeWornWithItFitsToo() {
        String worn = IntStream.range(0, 4)
                .mapToObj(i -> "&under[" + i + "].kind=WARM_UNDERWEAR&under[" + i + "].cloth=POLYCOTTON&over[" + i
                        + "].kind=OVERGARMENT&over[" + i + "].cloth=FLEECE&over[" + i + "].when=COOL")
                .collect(Collectors.joining());
        String path =
                new SheetSamples(port).made("event=" + ruled(40, 300) + "&design=tunic&size=M-M" + worn, CLOTH, "");
        fitsBothPapers(path);
        assertThat(Printed.of(pdf(path, "a4")).text().replaceAll("\\s+", " "))
                .contains("Worn over it garment worn over it: polyester fleece", "more, on the page of this sheet");
    }

    /** An event with so many rules, every third of which forbids what melts and every third of which only a person can judge. */
    private String ruled(int rules, int characters) {
        List<SafetyRule> all = IntStream.range(0, rules)
                .mapToObj(i -> {
                    String statement = "Rule number " + i + " ";
                    RuleDraft draft = RuleDraft.of(
                            SafetyRule.Authority.EVENT,
                            statement
                                    + "of the camp "
                                            .repeat(characters / 12)
                                            .substring(0, characters - statement.length() - 1)
                                    + ".");
                    return (i % 3 == 0
                                    ? draft.mostMeltable(0)
                                    : i % 3 == 1 ? draft.askAbout("sleeves") : draft.keepAtLeast(1))
                            .rule();
                })
                .toList();
        return events.add(new Event("Wendlow river camp", Season.SUMMER, seasons.spells(Season.SUMMER), all))
                .id();
    }

    @Test
    void hostileNamesStayNames() {
        Cloth known = cloths.byId(CLOTH).orElseThrow().cloth();
        String cloth = cloths.add(new Cloth(
                        SheetSamples.HOSTILE,
                        known.blend(),
                        known.weave(),
                        known.surface(),
                        known.finish(),
                        known.nap(),
                        known.stretch(),
                        known.figures(),
                        ""))
                .id();
        String event = events.add(new Event(
                        SheetSamples.HOSTILE,
                        Season.SUMMER,
                        seasons.spells(Season.SUMMER),
                        List.of(new SafetyRule(
                                SafetyRule.Authority.EVENT,
                                SheetSamples.HOSTILE,
                                Optional.empty(),
                                Set.of("acrylic"),
                                Optional.empty(),
                                false,
                                Optional.of(5.0)))))
                .id();
        String path = new SheetSamples(port)
                .made(
                        "event=" + event + "&design=tunic&size=M-M",
                        cloth,
                        "&title=" + SheetSamples.encoded(SheetSamples.HOSTILE));
        String text = fitsBothPapers(path).text();
        try (Visitor visitor = new Visitor(Visit.DESKTOP, port)) {
            visitor.at(path);
            assertThat(visitor.page().title()).startsWith("</text><script>");
            visitor.at(path + "/layout.svg");
            assertThat(visitor.page().title()).doesNotContain("taken'</script><");
        }
        assertThat(text).contains("<script>document.title='taken'</script>").doesNotContain("root:");
    }

    @Test
    void lettersOfManyLanguagesAreThereOrSaidToBeMissing() {
        SheetSamples samples = new SheetSamples(port);
        String asked = "season=SUMMER&design=apron&size=W-M";
        String known = "Zástěra Łódź žluťoučký Őr Ærø Ωμέγα Кафтан";
        String text = Printed.of(pdf(samples.made(asked, CLOTH, "&title=" + SheetSamples.encoded(known)), "a4"))
                .text();
        assertThat(text).contains(known).doesNotContain("□").doesNotContain("has no signs for");
        String unknown = Printed.of(
                        pdf(samples.made(asked, CLOTH, "&title=" + SheetSamples.encoded("上着 apron 𐍈")), "a4"))
                .text();
        assertThat(unknown).contains("□□ apron □").contains("has no signs for");
    }

    /** The PDF on A4, once all four papers were held to what they have to be. */
    private Printed fitsBothPapers(String path) {
        try (Visitor visitor = new Visitor(Visit.DESKTOP, port)) {
            Page page = visitor.at(path);
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
            visitor.isDrawn(page.locator(".layout-picture img"));
            holds(printed(page, "A4"), A4_WIDTH_MM, A4_HEIGHT_MM, true);
            holds(printed(page, "Letter"), LETTER_WIDTH_MM, LETTER_HEIGHT_MM, true);
        }
        Printed a4 = Printed.of(pdf(path, "a4"));
        holds(a4, A4_WIDTH_MM, A4_HEIGHT_MM, false);
        holds(Printed.of(pdf(path, "letter")), LETTER_WIDTH_MM, LETTER_HEIGHT_MM, false);
        return a4;
    }

    private static void holds(Printed printed, double widthMm, double heightMm, boolean drawingHasLetters) {
        printed.fits(widthMm, heightMm);
        assertThat(printed.text()).contains(SECTIONS);
        if (drawingHasLetters) {
            String drawing = printed.texts().stream()
                    .filter(text -> text.contains("of cloth; printed on A4"))
                    .findFirst()
                    .orElseThrow();
            assertThat(drawing)
                    .as("both ends of the cloth")
                    .contains("selvedge")
                    .contains("→ 0");
            assertThat(drawing).as("the list below it").contains("End of the sheet");
        }
    }

    private static Printed printed(Page page, String paper) {
        return Printed.of(page.pdf(new Page.PdfOptions().setFormat(paper)));
    }

    private byte[] pdf(String path, String paper) {
        HttpResponse<byte[]> answer = new SheetSamples(port).get(path + ".pdf?paper=" + paper);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/pdf");
        return answer.body();
    }
}
