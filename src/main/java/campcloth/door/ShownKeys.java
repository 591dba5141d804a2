package campcloth.door;

import campcloth.access.ShareKey;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The keys of shared links that an address carries: its parameters {@code key}, a few of them at most. They are read from the address alone,
 * so that no form is read before its time, and need no decoding.
 */
final class ShownKeys {

    static final int MOST = 4;

    private static final String PARAMETER = "key=";

    private ShownKeys() {}

    static Set<ShareKey> in(HttpServletRequest request) {
        String query = request.getQueryString();
        if (query == null || !query.contains(PARAMETER)) {
            return Set.of();
        }
        return Arrays.stream(query.split("&"))
                .filter(part -> part.startsWith(PARAMETER))
                .map(part -> ShareKey.in(part.substring(PARAMETER.length())))
                .flatMap(Optional::stream)
                .limit(MOST)
                .collect(Collectors.toSet());
    }
}
