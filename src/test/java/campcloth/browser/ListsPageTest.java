package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.supply.GeneratedList;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;

/** Somebody takes over a supplier's list, and takes their own away. The thousands of cloths go with the service, so that no test after it has them. */
@InBrowser
@DirtiesContext
class ListsPageTest {

    private static final long SEED = 20261126;
    private static final int ROWS = 1500;
    private static final String HOSTILE = """
            article no;name;composition;weight (g/m2);<svg onload=alert(1)>
            H1;<script>alert(1)</script>;100% linen;185;x
            H2;=HYPERLINK("http://example.org");100% wool;300;x
            H3;"\u202Egnol <img src=x onerror=alert(1)>";"<script>alert(2)</script>";300;x
            """;

    @TempDir
    Path folder;

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @EnumSource
    void aListIsLookedAtTakenOverWithItsProgressAndFound(Visit visit) throws IOException {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/import");
            visitor.holds();
            send(visitor, "Mill " + UUID.randomUUID(), generated());
            comes(page, "What would come of the list");
            assertThat(page.getByRole(AriaRole.DEFINITION).first()).hasText("1,500");
            assertThat(page.getByRole(AriaRole.TABLE).first()).containsText("weight");
            visitor.holds();
            String address = visitor.path();
            visitor.follow(visitor.button("Take it over"));
            comes(page, "The list is taken over");
            assertThat(visitor.path()).startsWith("/cloths/import/").isNotEqualTo(address);
            assertThat(page.getByText("New", new Page.GetByTextOptions().setExact(true)))
                    .isVisible();
            visitor.holds();
            visitor.follow(visitor.link("To the cloths that were added"));
            assertThat(page.locator("#origin-OWN")).isChecked();
            assertThat(page.locator(".hit .hint").first()).containsText("added here");
            assertThat(page.locator(".hit .hint").filter(new Locator.FilterOptions().setHasText("from the catalogue")))
                    .hasCount(0);
        }
    }

    /** Where no scripts run, none of these could. */
    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE"})
    void whatAListSaysRunsNowhere(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/import");
            send(
                    visitor,
                    "<script>alert(3)</script>\u202E" + UUID.randomUUID(),
                    HOSTILE.getBytes(StandardCharsets.UTF_8));
            comes(page, "What would come of the list");
            assertThat(page.getByText("<svg onload=alert(1)>")).isVisible();
            assertThat(page.getByRole(AriaRole.ROWHEADER, new Page.GetByRoleOptions().setName("4")))
                    .isVisible();
            visitor.holds();
            visitor.follow(visitor.button("Take it over"));
            comes(page, "The list is taken over");
            visitor.holds();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsNoListIsToldAndTheFormKeepsWhatWasTyped(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/import");
            send(visitor, "Mill", "no list at all\n".getBytes(StandardCharsets.UTF_8));
            comes(page, "The list cannot be read");
            visitor.holds();
            visitor.follow(visitor.button("Send another list"));
            send(visitor, " ", "a;b\n1;2\n".getBytes(StandardCharsets.UTF_8));
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("printable characters");
            visitor.holds();
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE_WITHOUT_SCRIPTS"})
    void aFileThatIsTooLargeIsToldOnAPage(Visit visit) throws IOException {
        Path large = Files.write(folder.resolve("list.csv"), new byte[18 * 1024 * 1024]);
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/import");
            list(page).setInputFiles(large);
            look(visitor, "Mill");
            comes(page, "The file is too large");
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "DESKTOP_WITHOUT_SCRIPTS"})
    void theCatalogueIsTakenAway(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/import");
            Download list = page.waitForDownload(
                    () -> visitor.link("The whole catalogue").click());
            assertThat(list.suggestedFilename()).isEqualTo("cloths.csv");
            Download own = page.waitForDownload(
                    () -> visitor.link("Everything of your own").click());
            assertThat(own.suggestedFilename()).isEqualTo("campcloth.zip");
        }
    }

    private static void send(Visitor visitor, String supplier, byte[] list) {
        list(visitor.page()).setInputFiles(new FilePayload("list.csv", "text/csv", list));
        look(visitor, supplier);
    }

    private static Locator list(Page page) {
        return page.getByLabel("The list", new Page.GetByLabelOptions().setExact(true));
    }

    private static void look(Visitor visitor, String supplier) {
        visitor.page().getByLabel("Who sells by it").fill(supplier);
        visitor.follow(visitor.button("Look at it"));
    }

    /** Waits until the page, which looks again by itself, says so. */
    private static void comes(Page page, String heading) {
        Locator first = page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1));
        assertThat(first).hasText(heading);
    }

    private static byte[] generated() throws IOException {
        ByteArrayOutputStream list = new ByteArrayOutputStream();
        GeneratedList.write(SEED, ROWS, list);
        return list.toByteArray();
    }
}
