package campcloth.rest;

import java.util.List;
import java.util.regex.Pattern;

/** The calls that make something new each time, unless they carry a key. */
final class CreatingCalls {

    /** As the document names them. */
    private static final List<String> PATHS = List.of(
            "/api/cloths",
            "/api/cloths/{id}/swatches",
            "/api/cloths/import",
            "/api/cutting-plans",
            "/api/events",
            "/api/jobs/cutting-plans",
            "/api/jobs/layouts",
            "/api/jobs/lists");

    private static final List<Pattern> ADDRESSES = PATHS.stream()
            .map(path -> Pattern.compile(path.replace("{id}", "[^/]+")))
            .toList();

    private CreatingCalls() {}

    /** Whether a POST to that path of the document is one. */
    static boolean isOne(String path) {
        return PATHS.contains(path);
    }

    /** Whether a call is one. */
    static boolean isOne(String method, String address) {
        return method.equals("POST")
                && ADDRESSES.stream().anyMatch(path -> path.matcher(address).matches());
    }
}
