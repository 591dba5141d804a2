package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.Season;
import campcloth.event.Seasons;
import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Events as people describe, read, change, hang up and remove them. */
@InBrowser
class EventsTest {

    private static final String SCRIPT = "<script>document.title='taken'</script>";
    private static final String DRAWING = "</svg><svg onload=\"document.title='taken'\"></svg>";
    private static final String TURNED = "\u202Eemag\u202C שלום مرحبا";
    private static final String LONG_WORD = "w".repeat(900);

    @LocalServerPort
    private int port;

    @Autowired
    private Events events;

    @Autowired
    private Seasons seasons;

    @ParameterizedTest
    @EnumSource
    void anEventIsDescribedFromTheUsualSpells(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/events");
            visitor.holds();
            visitor.follow(visitor.link("Describe an event"));
            visitor.holds();
            page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill("Wendlow winter camp");
            page.getByLabel("Season").selectOption("WINTER");
            visitor.button("Take the spells usual for the season (in place of these)")
                    .click();
            assertThat(page.locator("#spells2\\.name")).hasValue("fireside");
            visitor.button("Take away spell 1").click();
            assertThat(page.locator("#spells2\\.name")).hasValue("night");
            visitor.button("Add a spell").click();
            assertThat(page.locator("fieldset:focus")).containsText("Spell 4");
            page.locator("#spells3\\.name").fill("cooking");
            visitor.button("Add a rule").click();
            page.locator("#rules0\\.statement").fill("No fleece within three metres of a fire.");
            visitor.holds();
            visitor.follow(visitor.button("Keep the event").last());
            assertThat(visitor.heading("Wendlow winter camp")).isVisible();
            assertThat(page.getByText("No fleece within three metres of a fire."))
                    .isVisible();
            visitor.holds();
            Event kept = events.byId(visitor.path().substring("/events/".length()))
                    .orElseThrow()
                    .event();
            assertThat(kept.spells()).extracting("name").containsExactly("noon march", "fireside", "night", "cooking");
            assertThat(kept.season()).isEqualTo(Season.WINTER);
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatCannotBeUsedIsToldAtItsFieldAndNothingTypedIsLost(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/events/new");
            page.locator("#name").fill("Not finished");
            page.locator("#spells0\\.airC").fill("warm");
            page.locator("#spells0\\.hours").fill("");
            page.locator("#spells1\\.name").fill("changed by hand");
            visitor.button("Add a rule").click();
            assertThat(page.locator("#rules0\\.statement")).isVisible();
            assertThat(page.locator("#spells0\\.airC")).hasValue("warm");
            visitor.follow(visitor.button("Keep the event").last());
            assertThat(page.locator("#spells0\\.airC-wrong")).hasText("Write a number with digits, such as 12 or 12.5");
            assertThat(page.locator("#spells0\\.hours-wrong")).containsText("is missing");
            assertThat(page.locator("#rules0\\.statement-wrong")).isVisible();
            visitor.holds();
            page.locator("#spells0\\.hours").fill("4");
            page.locator("#spells0\\.airC").fill("70");
            page.locator("#endsOn").fill("2027-07-16");
            visitor.follow(visitor.button("Keep the event").last());
            assertThat(page.locator("#spells0\\.airC-wrong")).isVisible();
            assertThat(page.locator("#startsOn-wrong")).isVisible();
            assertThat(page.locator("#rules0\\.statement-wrong")).isVisible();
            assertThat(page.locator("#spells0\\.airC")).hasValue("70");
            assertThat(page.locator("#spells1\\.name")).hasValue("changed by hand");
            visitor.holds();
        }
    }

    @ParameterizedTest
    @EnumSource
    void aFormThatIsOutOfDateKeepsWhatWasTypedAndTellsWhatChanged(Visit visit) {
        KeptEvent kept = events.add(camp("Wendlow camp"));
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/events/" + kept.id() + "/edit");
            page.locator("#name").fill("Mine");
            events.replace(kept.id(), kept.version(), kept.event().at(61.5));
            visitor.follow(visitor.button("Keep the event").last());
            assertThat(visitor.heading("Somebody changed this event while you had it open"))
                    .isVisible();
            assertThat(page.locator("#name")).hasValue("Mine");
            assertThat(page.getByText("61.5")).isVisible();
            visitor.holds();
            visitor.follow(visitor.button("Keep mine instead"));
            assertThat(visitor.heading("Mine")).isVisible();
            assertThat(events.byId(kept.id()).orElseThrow().event().latitudeDeg())
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void anEventIsReadHungUpCopiedAndRemoved(Visit visit) {
        KeptEvent kept = events.add(camp("Wendlow summer camp"));
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/events/" + kept.id());
            visitor.holds();
            assertThat(page.getByText("none on file")
                            .or(page.getByText("None on file"))
                            .first())
                    .isVisible();
            assertThat(page.getByLabel("Its address on this machine")).hasValue(page.url());
            visitor.isDrawn(page.locator("img").first());
            visitor.follow(visitor.link("Fire rules to hang up"));
            assertThat(visitor.heading("Fire and clothing")).isVisible();
            visitor.holds();
            visitor.at(at(kept, ""));
            visitor.follow(visitor.button("Copy"));
            assertThat(page.locator("#name")).hasValue("Copy of Wendlow summer camp");
            visitor.at("/events/" + kept.id());
            visitor.follow(visitor.link("Remove"));
            visitor.holds();
            visitor.follow(visitor.button("Yes, remove it"));
            assertThat(visitor.path()).isEqualTo("/events");
            assertThat(events.byId(kept.id())).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void rulesAreTakenOverOnceAndTheirHistoryIsKept(Visit visit) {
        KeptEvent from = events.add(camp("Rules of " + visit));
        KeptEvent to = events.add(new Event("Bare", Season.SPRING, seasons.spells(Season.SPRING), List.of()));
        try (Visitor visitor = new Visitor(visit, port)) {
            for (int i = 0; i < 2; i++) {
                Page page = visitor.at("/events/" + to.id());
                page.getByLabel("Take over the rules of another event").selectOption(from.id());
                visitor.follow(visitor.button("Take them over"));
                assertThat(page.locator(".rule-words").first()).hasText("No acrylic at the fires.");
            }
            assertThat(events.byId(to.id()).orElseThrow().event().rules())
                    .hasSize(from.event().rules().size());
            visitor.page().getByText("How the rules came to be").click();
            visitor.follow(visitor.link("Version 0"));
            assertThat(visitor.heading("Rules as of version 0")).isVisible();
            visitor.holds();
        }
    }

    /** Where no scripts run, none of these could. */
    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE"})
    void hostileNamesAndRulesAreOnlyWords(Visit visit) {
        List<String> words = List.of(SCRIPT, DRAWING, TURNED, LONG_WORD);
        Event camp =
                camp(SCRIPT + TURNED).withRules(words.stream().map(Camps::rule).toList());
        KeptEvent kept = events.add(camp);
        try (Visitor visitor = new Visitor(visit, port)) {
            for (String path :
                    List.of("/events", at(kept, ""), at(kept, "/edit"), at(kept, "/fire-rules"), at(kept, "/remove"))) {
                Page page = visitor.at(path);
                assertThat(page.title()).doesNotStartWith("taken");
                visitor.holds();
                assertThat(page.locator("main script").count()).isZero();
            }
            assertThat(visitor.at(at(kept, "")).getByText(SCRIPT).first()).isVisible();
        }
        events.remove(kept.id(), kept.version());
    }

    private static String at(KeptEvent kept, String part) {
        return "/events/" + kept.id() + part;
    }

    private Event camp(String name) {
        return Camps.named(name, seasons);
    }
}
