package campcloth.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.SecureRandom;
import org.junit.jupiter.api.Test;

/** By what a browser is known again. */
class KnownBrowserTest {

    private static final String HASH = "{made up} hash of a password";

    private final KnownBrowser browser = KnownBrowser.random(new SecureRandom());

    @Test
    void aMarkIsKnownToTheAccountItWasMadeFor() {
        assertThat(KnownBrowser.in(browser.mark(HASH), HASH)).hasValue(browser);
        assertThat(KnownBrowser.in(browser.mark(HASH), "{made up} hash of another"))
                .as("another account, or the same after its password was changed")
                .isEmpty();
    }

    @Test
    void noOtherSignIsKnown() {
        String mark = browser.mark(HASH);
        for (int i = 0; i < mark.length(); i++) {
            char other = mark.charAt(i) == 'a' ? 'b' : 'a';
            assertThat(KnownBrowser.in(mark.substring(0, i) + other + mark.substring(i + 1), HASH))
                    .as("sign %d", i)
                    .isEmpty();
        }
        assertThat(KnownBrowser.in("", HASH)).isEmpty();
        assertThat(KnownBrowser.in(mark + "0", HASH)).isEmpty();
    }

    @Test
    void twoBrowsersHaveTwoNumbers() {
        assertThat(KnownBrowser.random(new SecureRandom())).isNotEqualTo(browser);
        assertThat(browser.mark(HASH)).startsWith(browser.number()).hasSize(96);
    }

    @Test
    void whatIsCountedTogetherIsNeverTheNameOfAnAccount() {
        AccountName name = new AccountName("Nora");
        assertThat(Tried.byAnybody(name).key()).isEqualTo("nora");
        assertThat(AccountName.in(Tried.in(browser, name).key())).isEmpty();
        assertThat(AccountName.in(Tried.byItself(name).key())).isEmpty();
    }
}
