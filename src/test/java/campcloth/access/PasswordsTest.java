package campcloth.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.figure.Refused;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Which passwords and names are taken, and how long waits grow. Lengths and the absence of rules about kinds of signs: NIST SP 800-63B-4,
 * section 3.1.1.2, seen quoted.
 */
class PasswordsTest {

    private static final AccountName NAME = new AccountName("Willow.Weaver-77");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "seven dry baskets",
                "fifteen letters",
                "1 of 2 and 3, or 4!",
                "\u00e4\u00f6\u00fc\u00df\u03b1\u03b2\u03b3\u0436\u0438\u043b\u3042\u3044\u3046\u3048\u304a",
                "aaaaaaaabbbbbbbbcccccccc"
            })
    void anySignsWillDoWhereThereAreEnough(String password) {
        assertThatCode(() -> Passwords.check(NAME, password, "next")).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Tr0ub4dor&3",
                "fourteen signs",
                "aaaaaaaaaaaaaaaa",
                "passwordpassword",
                "Password Password",
                "123456789012345",
                "0987654321098765",
                "qwertyuiopasdfgh",
                "abcdefghijklmnop",
                "Willow Weaver 77",
                "willowweaver7777",
                "correct horse battery staple",
                "\ud83e\uddf5\ud83e\uddf5\ud83e\uddf5\ud83e\uddf5\ud83e\uddf5\ud83e\uddf5\ud83e\uddf5\ud83e\uddf5"
            })
    void shortAndExpectedOnesAreRefused(String password) {
        assertThatThrownBy(() -> Passwords.check(NAME, password, "next"))
                .isInstanceOf(Refused.class)
                .hasMessageStartingWith("next: ");
    }

    @Test
    void signsAreCountedAsPeopleCountThem() {
        String faces = "\ud83e\uddf5\ud83e\udea1\ud83e\udde3\ud83e\udde4\ud83e\udde5";
        assertThatThrownBy(() -> Passwords.check(NAME, faces + faces.substring(2), "next"))
                .hasMessageContaining("shorter");
    }

    @Test
    void thereIsABound() {
        String words = "ash birch cherry dogwood elm ";
        assertThatCode(() -> Passwords.check(NAME, words.repeat(6), "next")).doesNotThrowAnyException();
        assertThatThrownBy(() -> Passwords.check(NAME, words.repeat(7), "next")).hasMessageContaining("longer");
    }

    @Test
    void theSameTextIsTheSamePasswordHoweverItIsComposed() {
        assertThat(Passwords.normal("caf\u00e9")).isEqualTo(Passwords.normal("cafe\u0301"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"abc", "A.b-c_9", "0123456789012345678901234567890123456789"})
    void names(String name) {
        assertThat(new AccountName(name).key()).isLowerCase();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "ab",
                ".abc",
                "a b c",
                "\u00e4bc",
                "abc\n",
                "<b>",
                "01234567890123456789012345678901234567890"
            })
    void noNames(String name) {
        assertThatThrownBy(() -> new AccountName(name)).isInstanceOf(Refused.class);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0",
        "9, 0",
        "10, 30",
        "11, 60",
        "12, 120",
        "14, 480",
        "15, 900",
        "16, 900",
        "99, 900",
        "2147483647, 900"
    })
    void waitsGrowUpToABound(int wrong, long seconds) {
        assertThat(LockOut.after(wrong)).isEqualTo(Duration.ofSeconds(seconds));
    }
}
