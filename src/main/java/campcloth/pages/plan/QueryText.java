package campcloth.pages.plan;

import campcloth.figure.Words;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes the part of an address behind the question mark, or the hidden fields that say the same. What is not there leaves nothing. */
final class QueryText {

    private final List<QueryPart> parts = new ArrayList<>();

    QueryText add(String name, @Nullable Object value) {
        if (value != null) {
            parts.add(new QueryPart(name, value instanceof Double number ? Words.exact(number) : value.toString()));
        }
        return this;
    }

    List<QueryPart> parts() {
        return List.copyOf(parts);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public String toString() {
        return parts.stream()
                .map(part -> encoded(part.name()) + "=" + encoded(part.value()))
                .collect(Collectors.joining("&"));
    }
}
