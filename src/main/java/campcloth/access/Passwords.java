package campcloth.access;

import campcloth.figure.Refused;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/**
 * Which passwords are taken, after NIST SP 800-63B-4 (2025), section 3.1.1.2: at least 15 characters where nothing else is asked for, every
 * sign of Unicode, each counted as one, normalised (NFKC) before it is hashed; no rules about kinds of signs; refused where it is
 * expected or common. What a list of leaked passwords would say beyond that is not asked: we send nothing of a password anywhere.
 */
public final class Passwords {

    public static final int LEAST = 15;

    /** The standard wants at least 64; the bound keeps the work of hashing small. */
    public static final int MOST = 200;

    private static final int LONGEST_REPEATED = 8;

    /** Lines along which people walk: digits, the alphabet, rows of common keyboards. */
    private static final String WALKS =
            "0123456789012345678909876543210987654321 abcdefghijklmnopqrstuvwxyz zyxwvutsrqponmlkjihgfedcba "
                    + "qwertyuiopasdfghjklzxcvbnm qwertzuiopasdfghjklyxcvbnm azertyuiopqsdfghjklmwxcvbn 1qaz2wsx3edc4rfv5tgb6yhn 1q2w3e4r5t6y7u8i9o0p";

    /** Long ones that people often choose; from memory, a list for a start and no more. */
    private static final Set<String> COMMON = Set.of(
            "correcthorsebatterystaple",
            "passwordpassword1",
            "thisisapassword",
            "thisismypassword",
            "mypasswordismypassword",
            "iloveyousomuch",
            "iloveyouforever",
            "administrator123",
            "administrator1234",
            "letmeinletmein1",
            "changemechangeme",
            "changemeplease1",
            "pleaseletmein123",
            "verysecretpassword",
            "supersecretpassword",
            "averylongpassword",
            "campclothcampcloth",
            "campclothpassword");

    private Passwords() {}

    /** The password as it is hashed and compared. */
    public static String normal(String typed) {
        return Normalizer.normalize(typed, Normalizer.Form.NFKC);
    }

    /**
     * Refuses what may not become the password of an account.
     *
     * @param field under which the password was given
     */
    public static void check(AccountName name, String typed, String field) {
        String password = normal(typed);
        int length = password.codePointCount(0, password.length());
        if (length < LEAST) {
            throw Refused.of(
                    field, "is shorter than " + LEAST + " characters", "take a longer one, such as a few words");
        }
        if (length > MOST) {
            throw Refused.of(field, "is longer than " + MOST + " characters", "take a shorter one");
        }
        String bare = password.toLowerCase(Locale.ROOT).replaceAll("[\\s._-]", "");
        if (isExpected(bare, name.key().replaceAll("[._-]", ""))) {
            throw Refused.of(
                    field,
                    "is one of those that are tried first",
                    "take words that have nothing to do with each other");
        }
    }

    private static boolean isExpected(String bare, String name) {
        return COMMON.contains(bare)
                || WALKS.contains(bare)
                || isRepeated(bare)
                || withoutDigitsBehind(bare).equals(withoutDigitsBehind(name));
    }

    private static String withoutDigitsBehind(String text) {
        return text.replaceAll("\\d+$", "");
    }

    /** One short piece over and over. */
    private static boolean isRepeated(String bare) {
        for (int length = 1; length <= LONGEST_REPEATED && length < bare.length(); length++) {
            String piece = bare.substring(0, length);
            if (piece.repeat(bare.length() / length + 1).startsWith(bare)) {
                return true;
            }
        }
        return false;
    }
}
