package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.WholeService;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;
import org.springframework.web.util.HtmlUtils;

/** Whatever can be reached from the first page by links, pictures and forms that ask, answers with something of its kind. */
@WholeService
@TestPropertySource(properties = "campcloth.demo=true")
class EveryLinkTest {

    private static final int MOST_PAGES = 300;
    private static final int MOST_OF_A_PATTERN = 5;

    private static final Pattern LINK = Pattern.compile("\\s(?:href|src|hx-get)=\"([^\"]*)\"");
    private static final Pattern ASKING = Pattern.compile("<form\\b[^>]*\\bmethod=\"get\"[^>]*\\baction=\"([^\"]*)\"");
    private static final Pattern PLACE = Pattern.compile("\\sid=\"([^\"]*)\"");
    private static final Pattern MADE_UP_NAME = Pattern.compile(
            "(?<=/)(?:[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}|[0-9]+|[a-z0-9]+(?:-[a-z0-9]+){2,})(?=/|$)");
    private static final Pattern NAME_AND_VALUE = Pattern.compile("=[^&]*");

    /** Nothing may be missing of these, or the crawl has lost its way. */
    private static final Set<String> KNOWN = Set.of(
            "/",
            "/plan",
            "/plan/cloths",
            "/shop",
            "/sheets",
            "/cloths",
            "/cloths/_",
            "/cloths/_/edit",
            "/cloths/new",
            "/cloths/import",
            "/cloths/sources",
            "/cloths/compare",
            "/burn-test",
            "/events",
            "/events/_",
            "/events/_/edit",
            "/events/_/fire-rules",
            "/demo");

    @LocalServerPort
    private int port;

    private final HttpClient client = HttpClient.newHttpClient();
    private final Deque<Step> toVisit = new ArrayDeque<>();
    private final Set<String> seen = new HashSet<>();
    private final Map<String, Integer> ofPattern = new HashMap<>();
    private final List<String> wrong = new ArrayList<>();

    /** An address and the page that leads there; a form that is sent with nothing filled in may be refused. */
    private record Step(String address, String from, boolean emptyForm) {}

    @Test
    void everyLinkLeadsSomewhere() throws IOException, InterruptedException {
        found("/", "the reader", false);
        int visited = 0;
        while (!toVisit.isEmpty() && visited < MOST_PAGES) {
            visit(toVisit.poll());
            visited++;
        }
        assertThat(wrong).isEmpty();
        Set<String> paths = new TreeSet<>();
        ofPattern.keySet().forEach(pattern -> paths.add(pattern.replaceFirst("\\?.*", "")));
        assertThat(paths).containsAll(KNOWN);
    }

    private void visit(Step step) throws IOException, InterruptedException {
        URI uri = URI.create("http://localhost:" + port + step.address());
        HttpResponse<byte[]> answer =
                client.send(HttpRequest.newBuilder(uri).GET().build(), BodyHandlers.ofByteArray());
        String type = answer.headers().firstValue("Content-Type").orElse("none");
        String told = step.address() + " from " + step.from() + ": " + answer.statusCode() + " " + type;
        boolean refused = step.emptyForm() && answer.statusCode() == 422;
        if (answer.statusCode() >= 400 && !refused) {
            wrong.add(told);
            return;
        }
        if (!type.startsWith(expectedType(uri.getPath()))) {
            wrong.add(told);
        }
        if (type.startsWith("text/html")) {
            follow(step.address(), new String(answer.body(), StandardCharsets.UTF_8));
        }
    }

    /** What a page leads to; places on itself are there. */
    private void follow(String address, String html) {
        Set<String> places = new HashSet<>();
        PLACE.matcher(html).results().forEach(place -> places.add(place.group(1)));
        for (Pattern pattern : List.of(LINK, ASKING)) {
            Matcher links = pattern.matcher(html);
            while (links.find()) {
                String link = HtmlUtils.htmlUnescape(links.group(1));
                if (link.startsWith("#") && !places.contains(link.substring(1))) {
                    wrong.add(link + " from " + address + ": no such place on the page");
                } else if (link.startsWith("/")) {
                    found(link.replaceFirst("#.*", ""), address, pattern == ASKING);
                }
            }
        }
    }

    private void found(String address, String from, boolean emptyForm) {
        if (seen.add(address) && ofPattern.merge(pattern(address), 1, Integer::sum) <= MOST_OF_A_PATTERN) {
            toVisit.add(new Step(address, from, emptyForm));
        }
    }

    /** An address without what is particular to one thing: names in its path and values in its question. */
    static String pattern(String address) {
        String[] parts = address.split("\\?", 2);
        String path = MADE_UP_NAME.matcher(parts[0]).replaceAll("_");
        if (parts.length < 2) {
            return path;
        }
        return path + "?"
                + String.join(
                        "&",
                        new TreeSet<>(List.of(
                                NAME_AND_VALUE.matcher(parts[1]).replaceAll("").split("&"))));
    }

    private static String expectedType(String path) {
        if (path.endsWith(".css")) {
            return "text/css";
        }
        if (path.endsWith(".js")) {
            return "text/javascript";
        }
        if (path.endsWith(".svg") || path.contains("/pictures/")) {
            return "image/svg+xml";
        }
        if (path.endsWith(".pdf")) {
            return "application/pdf";
        }
        if (path.endsWith("/cloths/export")) {
            return "text/csv";
        }
        if (path.startsWith("/api/")) {
            return "application/";
        }
        return "text/html";
    }
}
