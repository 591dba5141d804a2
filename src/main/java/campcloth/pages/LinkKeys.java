package campcloth.pages;

import campcloth.access.ShareKey;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The keys of shared links that a request carries; what is no key is left out. */
public final class LinkKeys {

    /** Name of the parameter. */
    public static final String PARAMETER = "key";

    private LinkKeys() {}

    /** As the next part of an address, which begins with that sign; empty where there is none. */
    public static String of(HttpServletRequest request, String sign) {
        return Stream.ofNullable(request.getParameterValues(PARAMETER))
                .flatMap(Arrays::stream)
                .distinct()
                .flatMap(text -> ShareKey.in(text).stream())
                .map(key -> PARAMETER + "=" + key.text())
                .collect(Collectors.collectingAndThen(
                        Collectors.joining("&"), keys -> keys.isEmpty() ? "" : sign + keys));
    }
}
