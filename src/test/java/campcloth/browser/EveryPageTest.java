package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.FireRole;
import campcloth.event.KeptEvent;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.figure.PictureRules;
import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * Every kind of page that links lead to, about an event and a cloth whose names would take over what lets them: axe finds nothing,
 * nothing sticks out of the screen, nothing of the names runs or becomes an element; nor in the drawings.
 */
@InBrowser
class EveryPageTest {

    private static final String HOSTILE = "<script>window.taken=1</script>\"'><img src=x onerror=window.taken=1>"
            + "<svg onload=window.taken=1> \u202Egnol " + "w".repeat(80);
    private static final String LONG_WORD = "w".repeat(1900);
    private static final String TAKEN = "window.taken === undefined && document.querySelectorAll("
            + "'img[src=\"x\"], svg[onload], script:not([src]), [onerror]').length === 0";
    private static final int FEWEST_KINDS = 22;

    @LocalServerPort
    private int port;

    @Autowired
    private Events events;

    @Autowired
    private Seasons seasons;

    @Autowired
    private Cloths cloths;

    private KeptEvent event;
    private KeptCloth cloth;

    @BeforeEach
    void keep() {
        SafetyRule rule = new SafetyRule(
                SafetyRule.Authority.EVENT,
                HOSTILE,
                Optional.of(0.0),
                Set.of(),
                Optional.empty(),
                false,
                Optional.of(3.0));
        List<Spell> spells = List.of(new Spell(
                "<b>noon</b>\u202E",
                4,
                22,
                50,
                2,
                Sun.FULL,
                Activity.SEATED,
                Optional.of(new OpenFire(FireRole.SEATED, Optional.of(2.0), Optional.of(50.0), Optional.empty()))));
        event = events.add(new Event(HOSTILE, Season.SUMMER, spells, List.of(rule)));
        cloth = cloths.add(
                cloths.byId("linen-plain-185-washed").orElseThrow().cloth().named(HOSTILE, LONG_WORD));
    }

    @AfterEach
    void forget() {
        events.remove(event.id(), event.version());
        cloths.remove(cloth.id(), cloth.version());
    }

    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE"})
    void everyPageIsForEverybodyAndKeepsNamesAsText(Visit visit) {
        Deque<String> toVisit = new ArrayDeque<>(begin());
        Set<String> known = new HashSet<>();
        Set<String> kinds = new TreeSet<>();
        try (Visitor visitor = new Visitor(visit, port)) {
            while (!toVisit.isEmpty()) {
                String address = toVisit.poll();
                if (known.add(address) && kinds.add(kind(address))) {
                    Page page = visitor.at(address);
                    visitor.holds();
                    assertThat(page.evaluate(TAKEN))
                            .as("names are text on %s", address)
                            .isEqualTo(true);
                    links(page).forEach(toVisit::add);
                }
            }
        }
        assertThat(kinds).hasSizeGreaterThanOrEqualTo(FEWEST_KINDS);
    }

    @Test
    void drawingsKeepNamesAsText() throws Exception {
        SheetSamples over = new SheetSamples(port);
        for (String drawing : List.of(
                sheet() + "/layout.svg",
                "/events/" + event.id() + "/pictures/fire.svg?fire=0",
                "/plan/pictures/course.svg?" + asked() + "&cloth=" + cloth.id(),
                "/plan/pictures/fire.svg?" + asked() + "&fire=0&cloth=" + cloth.id())) {
            PictureRules.read(new String(over.get(drawing).body(), StandardCharsets.UTF_8), drawing);
        }
    }

    private List<String> begin() {
        return List.of(
                "/events/" + event.id(),
                "/events/" + event.id() + "/edit",
                "/events/" + event.id() + "/fire-rules",
                "/cloths/" + cloth.id(),
                "/cloths/" + cloth.id() + "/edit",
                "/cloths?text=gnol",
                "/plan?" + asked(),
                "/plan/cloths?text=gnol&" + asked(),
                "/plan/compare?" + asked() + "&cloth=" + cloth.id() + "&cloth=linen-plain-185-washed",
                "/plan/firmness?text=gnol&" + asked(),
                "/plan/buy?" + asked() + "&cloth=" + cloth.id(),
                sheet(),
                "/shop?label=" + SheetSamples.encoded(HOSTILE) + "&" + asked(),
                "/burn-test?warp.residue=hard-bead",
                "/cloths/compare?cloth=" + cloth.id() + "&cloth=linen-plain-185-washed",
                "/nowhere",
                "/");
    }

    private String asked() {
        return "event=" + event.id() + "&design=tunic&size=M-M&under%5B0%5D.kind=SHIRT&under%5B0%5D.named="
                + SheetSamples.encoded(HOSTILE) + "&over%5B0%5D.kind=CLOAK&over%5B0%5D.cloth=FLEECE";
    }

    private String sheet() {
        return new SheetSamples(port)
                .made(asked(), cloth.id(), "&count=1&fold=ANY&sewnBy=MACHINE&title=" + SheetSamples.encoded(HOSTILE));
    }

    /** What leads on to pages; what is fetched or drawn is no page. */
    @SuppressWarnings("unchecked")
    private static List<String> links(Page page) {
        List<String> all = (List<String>) page.evaluate(
                "[...document.querySelectorAll('a[href^=\"/\"]')].map(link => link.getAttribute('href'))");
        return all.stream()
                .map(link -> link.replaceFirst("#.*", ""))
                .filter(link -> !link.startsWith("/api/") && !link.startsWith("/v3/"))
                .filter(link -> !link.contains(".pdf") && !link.contains(".svg"))
                .toList();
    }

    private static String kind(String address) {
        return EveryLinkTest.pattern(address).replaceFirst("\\?.*", "");
    }
}
