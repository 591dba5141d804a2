package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a browser does with pages of the running service: keeps cookies, sends forms with the hidden token they came with. */
public final class Browsing {

    private static final Pattern CSRF = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    private static final String COOKIE = "SESSION";

    private final CookieManager cookies = new CookieManager();
    private final HttpClient http =
            HttpClient.newBuilder().cookieHandler(cookies).build();
    private final String server;

    public Browsing(int port) {
        this.server = "http://localhost:" + port;
    }

    /** A browser in which somebody has logged in. */
    public static Browsing as(int port, String name) {
        Browsing browser = new Browsing(port);
        HttpResponse<String> in = browser.login(name, HostedAccounts.PASSWORD);
        assertThat(in.statusCode()).as(in.body()).isEqualTo(302);
        return browser;
    }

    public HttpResponse<String> login(String name, String password) {
        return submit("/login", "/login", Map.of("name", name, "password", password));
    }

    public HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(server + path)).build());
    }

    /** Opens a page and sends a form of it. */
    public HttpResponse<String> submit(String page, String path, Map<String, String> fields) {
        return post(path, fields, csrf(get(page).body()));
    }

    /** Sends a form with that token against forgery, or with none. */
    public HttpResponse<String> post(String path, Map<String, String> fields, Optional<String> csrf) {
        String form = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        String sent = csrf.map(token -> form + "&_csrf=" + encoded(token)).orElse(form);
        return send(HttpRequest.newBuilder(URI.create(server + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(sent))
                .build());
    }

    /** The token in the first form of a page, where it has one. */
    public static Optional<String> csrf(String page) {
        Matcher found = CSRF.matcher(page);
        return found.find() ? Optional.of(found.group(1)) : Optional.empty();
    }

    /** The cookie of the session. */
    public Optional<HttpCookie> session() {
        List<HttpCookie> all = cookies.getCookieStore().getCookies();
        return all.stream().filter(cookie -> cookie.getName().equals(COOKIE)).findFirst();
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return http.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (IOException failure) {
            throw new AssertionError(request.toString(), failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(request.toString(), stopped);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
