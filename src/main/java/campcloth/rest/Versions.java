package campcloth.rest;

import campcloth.figure.Refused;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Versions of kept things as strong entity tags: {@code "3"}; the rules of {@code If-Match} after RFC 9110, 13.1.1. */
final class Versions {

    private static final Pattern TAG = Pattern.compile("\\G\\s*(W/)?(\"[^\"]*\")\\s*(?:,|$)");
    private static final String ANY = "*";

    private Versions() {}

    static String etag(long version) {
        return "\"" + version + "\"";
    }

    /**
     * The version that a change is made on: the one that is there, if the header names it or names any.
     *
     * @param actual version of what is there
     * @throws Precondition where the header is missing or names only others; weak tags never match
     */
    static long expected(@Nullable String ifMatch, long actual) {
        if (ifMatch == null || ifMatch.isBlank()) {
            throw Precondition.missing();
        }
        if (ifMatch.strip().equals(ANY)) {
            return actual;
        }
        Matcher tag = TAG.matcher(ifMatch);
        int end = 0;
        boolean named = false;
        while (tag.find()) {
            named |= tag.group(1) == null && tag.group(2).equals(etag(actual));
            end = tag.end();
        }
        if (end < ifMatch.length()) {
            throw Refused.of("If-Match", "is not an ETag", "send the ETag exactly as you read it, with its quotes");
        }
        if (!named) {
            throw Precondition.stale(actual);
        }
        return actual;
    }
}
