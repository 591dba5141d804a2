package campcloth.browser;

import campcloth.journey.WholeService;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/** The whole service, tried in a real browser; skipped with a line that says so where there is none. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(BrowserThere.class)
@WholeService
@interface InBrowser {}
