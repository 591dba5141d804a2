package campcloth.rest;

import campcloth.figure.Refused;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Versions of kept things as strong entity tags: {@code "3"}. */
final class Versions {

    private static final Pattern TAG = Pattern.compile("\"(\\d{1,18})\"");

    private Versions() {}

    static String etag(long version) {
        return "\"" + version + "\"";
    }

    /** The version that a change is made on. */
    static long expected(@Nullable String ifMatch) {
        if (ifMatch == null || ifMatch.isBlank()) {
            throw Precondition.missing();
        }
        Matcher tag = TAG.matcher(ifMatch.trim());
        if (!tag.matches()) {
            throw Refused.of("If-Match", "is not an ETag of ours", "send the ETag exactly as you read it");
        }
        return Long.parseLong(tag.group(1));
    }
}
