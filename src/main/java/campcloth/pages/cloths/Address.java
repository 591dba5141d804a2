package campcloth.pages.cloths;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** An address with its query, written piece by piece. */
final class Address {

    private final StringBuilder written;
    private char next = '?';

    Address(String path) {
        written = new StringBuilder(path);
    }

    /** Leaves out what is not there. */
    Address add(String name, @Nullable Object value) {
        if (value != null) {
            written.append(next).append(name).append('=').append(encoded(value.toString()));
            next = '&';
        }
        return this;
    }

    Address addAll(String name, List<?> values) {
        values.forEach(value -> add(name, value));
        return this;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public String toString() {
        return written.toString();
    }
}
