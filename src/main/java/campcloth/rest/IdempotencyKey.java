package campcloth.rest;

import campcloth.figure.Refused;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The key by which a call that makes something is known again when it is sent once more, after the Internet-Draft
 * draft-ietf-httpapi-idempotency-key-header-07 (section 2): a String of structured fields (RFC 8941, 3.3.3), here also without its
 * quotes.
 */
final class IdempotencyKey {

    static final String HEADER = "Idempotency-Key";

    static final String EXAMPLE = "\"8e03978e-40d5-43e8-bc93-6894a57f9324\"";

    static final String DESCRIPTION =
            "1 to 100 visible ASCII characters, unlike any sent before, such as a UUID, in quotes or not."
                    + " The same call with the same key is answered again as the first time, with Idempotency-Replayed: true, and makes"
                    + " nothing new, for 24 hours; with another body it is refused (422); while the first is worked on: 409. A call that"
                    + " was refused (4xx) made nothing and does not use its key up; after a failure (5xx) the same call with the same key"
                    + " finds what the first may have made.";

    private static final Pattern BARE = Pattern.compile("[!#-\\[\\]-~]{1,100}");
    private static final Pattern QUOTED = Pattern.compile("\"((?:[ !#-\\[\\]-~]|\\\\[\"\\\\])*)\"");
    private static final Pattern VISIBLE = Pattern.compile("[!-~]{1,100}");
    private static final Pattern ESCAPED = Pattern.compile("\\\\(.)");

    private IdempotencyKey() {}

    /** The key in the header's value. */
    static String read(String header) {
        String told = header.strip();
        Matcher quoted = QUOTED.matcher(told);
        if (quoted.matches()) {
            String key = ESCAPED.matcher(quoted.group(1)).replaceAll("$1");
            if (VISIBLE.matcher(key).matches()) {
                return key;
            }
        } else if (BARE.matcher(told).matches()) {
            return told;
        }
        throw Refused.of(
                HEADER, "is no key", "send 1 to 100 visible ASCII characters, such as a UUID, in quotes or not");
    }
}
