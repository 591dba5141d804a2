package campcloth.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A token as a program shows it: 256 random bits, which nobody guesses, so that a plain digest keeps it well enough. It begins with a mark by
 * which it is found where it was published by mistake.
 */
public record TokenSecret(String text) {

    private static final String MARK = "campcloth_";
    private static final int BYTES = 32;
    private static final Pattern FORM = Pattern.compile(MARK + "[A-Za-z0-9_-]{43}");

    public TokenSecret {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("not a token");
        }
    }

    /** The token in a text that came from outside, if it is one. */
    public static Optional<TokenSecret> in(String text) {
        return FORM.matcher(text).matches() ? Optional.of(new TokenSecret(text)) : Optional.empty();
    }

    public static TokenSecret random(SecureRandom random) {
        byte[] bits = new byte[BYTES];
        random.nextBytes(bits);
        return new TokenSecret(MARK + Base64.getUrlEncoder().withoutPadding().encodeToString(bits));
    }

    /** What is kept of it. */
    public byte[] digest() {
        return sha256(text);
    }

    static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }

    /** Tokens do not belong into logs. */
    @Override
    public String toString() {
        return "TokenSecret[...]";
    }
}
