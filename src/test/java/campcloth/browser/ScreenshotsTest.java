package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Clip;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** Pictures of the pages, taken anew by each run; {@code -Dscreenshots.keep=true} puts them in place of the kept ones. */
@InBrowser
@TestPropertySource(properties = "campcloth.demo=true")
class ScreenshotsTest {

    private static final Path TAKEN = Path.of("target", "screenshots");
    private static final Path KEPT = Path.of("src", "docs", "pictures");
    private static final int FEWEST_COLOURS = 30;
    private static final long MOST_BYTES = 200_000;

    @LocalServerPort
    private int port;

    @Test
    void thePagesAsTheyLook() throws IOException {
        String camp;
        try (Visitor visitor = new Visitor(Visit.DESKTOP, port)) {
            visitor.at("/events");
            camp = visitor.link("Wendlow river camp (demo)")
                    .getAttribute("href")
                    .substring("/events/".length());
            String asked = "event=" + camp + "&design=tunic&size=M-M";
            visitor.at("/plan/cloths?" + asked);
            taken(visitor.page(), "ranking", "article", 900);
            visitor.at("/plan/compare?" + asked + "&cloth=linen-plain-185-washed&cloth=polycotton-65-35-200");
            taken(visitor.page(), "side-by-side", "h1", 1000);
            visitor.at("/plan/buy?" + asked + "&cloth=linen-plain-185-washed");
            visitor.follow(visitor.button("Make the plan sheet"));
            visitor.isDrawn(visitor.page().locator(".layout-picture img"));
            taken(visitor.page(), "plan-sheet", ".layout-picture", 720);
            visitor.at("/events/" + camp + "/fire-rules");
            taken(visitor.page(), "fire-rules", "h1", 1000);
        }
        try (Visitor visitor = new Visitor(Visit.PHONE, port)) {
            visitor.at(
                    "/shop?label=65%2F35+polyester%2Fcotton&design=tunic&size=M-M&weightGsm=200&widthCm=150&season=SUMMER&event="
                            + camp);
            taken(visitor.page(), "shop-on-a-phone", "#answer", 740);
        }
    }

    /** From a little above the first of these on, so many pixels high or to the end of the page. */
    private static void taken(Page page, String name, String from, int heightPx) throws IOException {
        page.waitForLoadState();
        double top = Math.max(
                0,
                ((Number) page.locator(from).first().evaluate("one => one.getBoundingClientRect().top + scrollY"))
                                .doubleValue()
                        - 24);
        double end = ((Number) page.evaluate("document.documentElement.scrollHeight")).doubleValue();
        int width = page.viewportSize().width;
        Files.createDirectories(TAKEN);
        Path file = TAKEN.resolve(name + ".png");
        page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(true)
                .setClip(new Clip(0, top, width, Math.min(heightPx, end - top)))
                .setPath(file));
        assertThat(Files.size(file)).as("bytes of %s", name).isLessThan(MOST_BYTES);
        BufferedImage picture = ImageIO.read(file.toFile());
        assertThat(picture.getWidth()).isEqualTo(width);
        assertThat(picture.getHeight()).isGreaterThan(300);
        assertThat(colours(picture)).as("colours of %s", name).isGreaterThan(FEWEST_COLOURS);
        if (Boolean.getBoolean("screenshots.keep")) {
            Files.createDirectories(KEPT);
            Files.copy(file, KEPT.resolve(name + ".png"), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static int colours(BufferedImage picture) {
        Set<Integer> seen = new HashSet<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                seen.add(picture.getRGB(x, y));
            }
        }
        return seen.size();
    }
}
