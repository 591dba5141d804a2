package campcloth.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The one Chromium of a test run: found on this machine, started once, ended with the tests. */
final class Browsers {

    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome", "chrome");
    private static final List<String> FLAGS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    /** How long anything that is to come may take where the machine does other things besides; what is there at once costs nothing. */
    private static final double PATIENCE_MS = 60_000;

    private static @Nullable Browser browser;

    private Browsers() {}

    /** Where Chromium is: {@code CAMPCLOTH_CHROMIUM}, else the first of its names on the path. */
    static Optional<Path> chromium() {
        String told = System.getenv("CAMPCLOTH_CHROMIUM");
        if (told != null) {
            return Optional.of(Path.of(told)).filter(Files::isExecutable);
        }
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Whether a machine without a browser fails the tests instead of skipping them. */
    static boolean required() {
        return "required".equals(System.getenv("CAMPCLOTH_BROWSER"));
    }

    /** A fresh profile, as of somebody who comes for the first time. */
    static BrowserContext visitor(Visit visit) {
        BrowserContext context = browser().newContext(visit.options());
        context.setDefaultTimeout(PATIENCE_MS);
        return context;
    }

    private static synchronized Browser browser() {
        if (browser == null) {
            Playwright playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            browser = playwright
                    .chromium()
                    .launch(new BrowserType.LaunchOptions()
                            .setExecutablePath(chromium().orElseThrow())
                            .setHeadless(true)
                            .setTimeout(2 * PATIENCE_MS)
                            .setArgs(FLAGS));
            PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
            Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        }
        return browser;
    }
}
