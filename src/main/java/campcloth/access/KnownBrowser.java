package campcloth.access;

import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * A browser in which an account has logged in, known again by a mark that it keeps: a random number, and its HMAC (RFC 2104) under the
 * account's password hash, which nobody outside knows and which changes with the password. The concept is that of device cookies (OWASP, Slow
 * Down Online Guessing Attacks with Device Cookies; from memory). A mark lets nobody in: it says only which attempts are counted together.
 *
 * @param number names the browser
 */
record KnownBrowser(String number) {

    private static final int BYTES = 16;
    private static final Pattern MARK = Pattern.compile("([0-9a-f]{32})([0-9a-f]{64})");
    private static final String ALGORITHM = "HmacSHA256";

    static KnownBrowser random(SecureRandom random) {
        byte[] bits = new byte[BYTES];
        random.nextBytes(bits);
        return new KnownBrowser(HexFormat.of().formatHex(bits));
    }

    /** The browser that shows a mark, if it was made for the account with that hash. */
    static Optional<KnownBrowser> in(String shown, String passwordHash) {
        return Optional.of(MARK.matcher(shown))
                .filter(mark -> mark.matches() && same(mark.group(2), hmac(mark.group(1), passwordHash)))
                .map(mark -> new KnownBrowser(mark.group(1)));
    }

    /** What the browser keeps. */
    String mark(String passwordHash) {
        return number + hmac(number, passwordHash);
    }

    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.US_ASCII), other.getBytes(StandardCharsets.US_ASCII));
    }

    private static String hmac(String number, String passwordHash) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(new SecretKeySpec(passwordHash.getBytes(StandardCharsets.UTF_8), ALGORITHM));
            return HexFormat.of().formatHex(mac.doFinal(number.getBytes(StandardCharsets.US_ASCII)));
        } catch (NoSuchAlgorithmException | InvalidKeyException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }
}
