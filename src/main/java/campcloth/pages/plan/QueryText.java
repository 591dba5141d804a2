package campcloth.pages.plan;

import campcloth.figure.Words;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;

/** Writes the part of an address behind the question mark. What is not there leaves nothing. */
final class QueryText {

    private final StringJoiner parts = new StringJoiner("&");

    QueryText add(String name, @Nullable Object value) {
        if (value != null) {
            parts.add(encoded(name) + "="
                    + encoded(value instanceof Double number ? Words.exact(number) : value.toString()));
        }
        return this;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public String toString() {
        return parts.toString();
    }
}
