package campcloth.access;

import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The unguessable part of a link by which a kept thing is shared: 128 random bits, base64url without padding.
 *
 * @param text 22 letters, digits, hyphens or underlines
 */
public record ShareKey(String text) {

    private static final int BYTES = 16;
    private static final Pattern FORM = Pattern.compile("[A-Za-z0-9_-]{22}");

    public ShareKey {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("not the key of a shared link");
        }
    }

    /** The key in a text that came from outside, if it is one. */
    public static Optional<ShareKey> in(String text) {
        return FORM.matcher(text).matches() ? Optional.of(new ShareKey(text)) : Optional.empty();
    }

    public static ShareKey random(SecureRandom random) {
        byte[] bits = new byte[BYTES];
        random.nextBytes(bits);
        return new ShareKey(Base64.getUrlEncoder().withoutPadding().encodeToString(bits));
    }

    /** Keys do not belong into logs. */
    @Override
    public String toString() {
        return "ShareKey[...]";
    }
}
