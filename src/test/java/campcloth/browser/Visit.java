package campcloth.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.options.ColorScheme;

/** How somebody comes: with which screen, and whether scripts run. */
enum Visit {
    DESKTOP(1280, 900, true, ColorScheme.LIGHT),
    DESKTOP_DARK(1280, 900, true, ColorScheme.DARK),
    DESKTOP_WITHOUT_SCRIPTS(1280, 900, false, ColorScheme.LIGHT),
    PHONE(360, 740, true, ColorScheme.LIGHT),
    PHONE_WITHOUT_SCRIPTS(360, 740, false, ColorScheme.LIGHT);

    private final int widthPx;
    private final int heightPx;
    private final boolean scripts;
    private final ColorScheme colours;

    Visit(int widthPx, int heightPx, boolean scripts, ColorScheme colours) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.scripts = scripts;
        this.colours = colours;
    }

    boolean scripts() {
        return scripts;
    }

    Browser.NewContextOptions options() {
        return new Browser.NewContextOptions()
                .setViewportSize(widthPx, heightPx)
                .setJavaScriptEnabled(scripts)
                .setColorScheme(colours);
    }
}
