package campcloth.access;

import campcloth.figure.Refused;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The name of an account: letters and digits of ASCII, so that no two names look alike, with points, underlines and hyphens between them.
 *
 * @param text as its owner writes it; two names that differ in case alone are the same
 */
public record AccountName(String text) {

    public static final int LEAST = 3;
    public static final int MOST = 40;

    private static final Pattern FORM =
            Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{" + (LEAST - 1) + "," + (MOST - 1) + "}");

    public AccountName {
        if (!FORM.matcher(text).matches()) {
            throw Refused.of(
                    "name",
                    "cannot be the name of an account",
                    "use " + LEAST + " to " + MOST
                            + " letters a-z, digits, points, underlines or hyphens, a letter or digit first");
        }
    }

    /** The name in what somebody typed, if it can be one. */
    public static Optional<AccountName> in(String typed) {
        return FORM.matcher(typed).matches() ? Optional.of(new AccountName(typed)) : Optional.empty();
    }

    /** What the name is found by. */
    public String key() {
        return text.toLowerCase(Locale.ROOT);
    }
}
