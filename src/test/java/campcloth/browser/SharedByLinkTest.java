package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Role;
import campcloth.journey.HostedAccounts;
import campcloth.journey.HostedService;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What one shares by a link, as its owner and as somebody without an account meet it. */
@ExtendWith(BrowserThere.class)
@HostedService
class SharedByLinkTest {

    private static final String ASKED = "season=SUMMER&design=tunic&size=M-M";
    private static final String CLOTH = "wool-diamond-twill-260";

    @LocalServerPort
    private int port;

    @Autowired
    private HostedAccounts known;

    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE", "PHONE_WITHOUT_SCRIPTS"})
    void anEventIsReadByItsLinkUntilItsOwnerStopsSharing(Visit visit) {
        try (Visitor owner = new Visitor(visit, port);
                Visitor stranger = new Visitor(visit, port)) {
            Page page = owner.at("/events/new");
            owner.logIn(maker(), HostedAccounts.PASSWORD);
            page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill("Wendlow river camp");
            owner.button("Add a rule").click();
            page.locator("#rules0\\.statement").fill("Wool at the fires.");
            owner.follow(owner.button("Keep the event").last());
            assertThat(owner.heading("Wendlow river camp")).isVisible();
            String plain = owner.path();
            owner.holds();
            stranger.at(plain);
            assertThat(stranger.path()).startsWith("/login");
            String shared = shared(owner);
            theAddressIsCopiedWhereScriptsRun(owner, visit);

            Page read = stranger.at(shared);
            assertThat(stranger.heading("Wendlow river camp")).isVisible();
            assertThat(read.getByText("Wool at the fires.")).isVisible();
            assertThat(read.locator("main form")).hasCount(0);
            assertThat(read.locator("main a[href*='/edit'], main a[href*='/remove']"))
                    .hasCount(0);
            assertThat(stranger.link("Log in")).isVisible();
            stranger.isDrawn(read.locator("main img").first());
            stranger.holds();
            stranger.follow(read.locator("main a[href*='/fire-rules']"));
            assertThat(read.getByText("Wool at the fires.")).isVisible();
            stranger.isDrawn(read.locator("main img").first());
            stranger.holds();

            owner.follow(owner.button("Stop sharing"));
            assertThat(owner.button("Share by link")).isVisible();
            stranger.at(shared);
            assertThat(stranger.heading("Wendlow river camp")).hasCount(0);
            stranger.holds();
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE_WITHOUT_SCRIPTS"})
    void aSheetIsReadByItsLinkWithItsPapersAndDrawing(Visit visit) {
        try (Visitor owner = new Visitor(visit, port);
                Visitor stranger = new Visitor(visit, port)) {
            owner.at("/plan/buy?" + ASKED + "&cloth=" + CLOTH);
            owner.logIn(maker(), HostedAccounts.PASSWORD);
            owner.follow(owner.button("Make the plan sheet"));
            owner.holds();
            Page read = stranger.at(shared(owner));
            stranger.isDrawn(read.locator("main img").first());
            stranger.holds();
            assertThat(stranger.button("Delete")).hasCount(0);
            Locator papers = read.locator("main a[href*='.pdf'], main a[href*='layout.svg']");
            assertThat(papers).hasCount(3);
            for (Locator paper : papers.all()) {
                APIResponse answer =
                        read.request().get(paper.evaluate("a => a.href").toString());
                assertThat(answer.status()).as(answer.url()).isEqualTo(200);
                assertThat(answer.headers().get("content-type")).doesNotContain("html");
            }
        }
    }

    private String maker() {
        return known.account("sharing", Set.of(Role.MAKER)).name().text();
    }

    /** Shares what is shown, and tells the address that is then to be passed on, without the server. */
    private static String shared(Visitor owner) {
        owner.follow(owner.button("Share by link"));
        Locator address = owner.page().getByLabel("Address to pass on");
        assertThat(address).isVisible();
        owner.holds();
        return address.inputValue().replaceFirst("^http://[^/]*", "");
    }

    private static void theAddressIsCopiedWhereScriptsRun(Visitor owner, Visit visit) {
        Page page = owner.page();
        if (!visit.scripts()) {
            assertThat(page.locator(".copy button")).isHidden();
            return;
        }
        page.context().grantPermissions(List.of("clipboard-read", "clipboard-write"));
        Locator button = owner.button("Copy the address");
        button.click();
        assertThat(page.locator(".copy").getByRole(AriaRole.STATUS)).hasText("Copied.");
        assertThat(button).isFocused();
        assertThat(page.evaluate("navigator.clipboard.readText()"))
                .isEqualTo(page.locator("#shared").inputValue());
        owner.holds();
    }
}
