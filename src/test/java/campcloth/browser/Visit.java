package campcloth.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;

/** How somebody comes: with which screen, and whether scripts run. */
enum Visit {
    DESKTOP(1280, 900, true),
    DESKTOP_WITHOUT_SCRIPTS(1280, 900, false),
    PHONE(360, 740, true),
    PHONE_WITHOUT_SCRIPTS(360, 740, false);

    private final int widthPx;
    private final int heightPx;
    private final boolean scripts;

    Visit(int widthPx, int heightPx, boolean scripts) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.scripts = scripts;
    }

    boolean scripts() {
        return scripts;
    }

    Browser.NewContextOptions options() {
        return new Browser.NewContextOptions()
                .setViewportSize(widthPx, heightPx)
                .setJavaScriptEnabled(scripts)
                .setColorScheme(ColorScheme.LIGHT);
    }

    /** The page as it stands is usable by everybody: on a desktop in light and in dark, since colours do not go by the width. */
    void holds(Page page) {
        if (scripts) {
            Accessible.isAccessible(
                    page, this == DESKTOP ? List.of(ColorScheme.DARK, ColorScheme.LIGHT) : List.of(ColorScheme.LIGHT));
            Accessible.fitsItsScreen(page);
        }
    }
}
