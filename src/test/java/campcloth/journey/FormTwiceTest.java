package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.web.util.HtmlUtils;

/** A form that makes something, sent twice, makes it once and leads to it both times. */
@WholeService
class FormTwiceTest {

    private static final int AT_ONCE = 3;
    private static final Pattern FORM = Pattern.compile("<form[^>]*>.*?</form>", Pattern.DOTALL);
    private static final Pattern INPUT = Pattern.compile("<input[^>]*>");
    private static final Pattern SELECT = Pattern.compile("<select([^>]*)>(.*?)</select>", Pattern.DOTALL);
    private static final Pattern SELECTED = Pattern.compile("<option([^>]*selected[^>]*)>");

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Autowired
    private JdbcTemplate sql;

    @Test
    void anEvent() throws Exception {
        String name = named("Wendlow");
        Map<String, String> form = form("/events/new", "/events/new");
        form.put("name", name);
        makesOne("/events/new", form, "event", name);
        form.put("name", name + ", another");
        redirect(send("/events/new", form));
        assertThat(rows("event", name))
                .as("typed otherwise it is another event")
                .isEqualTo(2);
    }

    @Test
    void aCopyOfAnEvent() throws Exception {
        String name = named("Wendlow");
        Map<String, String> form = form("/events/new", "/events/new");
        form.put("name", name);
        String event = redirect(send("/events/new", form));
        makesOne(event + "/copy", form(event, event + "/copy"), "event", name);
    }

    @Test
    void aCloth() throws Exception {
        String name = named("Linen");
        makesOne("/cloths/new", newCloth(name), "cloth", name);
    }

    @Test
    void aSwatch() throws Exception {
        String cloth = redirect(send("/cloths/new", newCloth(named("Linen"))));
        String path = cloth + "/swatches/new";
        Map<String, String> form = form(path, path);
        form.put("weighed.pieces[0].lengthCm", "20");
        form.put("weighed.pieces[0].widthCm", "20");
        form.put("weighed.pieces[0].massG", "7.4");
        form.put("weighed.scaleStepG", "0.1");
        form.put("weighed.rulerStepMm", "1");
        makesOne(path, form, "cloth_swatch", idIn(cloth));
    }

    @Test
    void aPlanSheetWithItsPlan() throws Exception {
        String name = named("Linen");
        String cloth = idIn(redirect(send("/cloths/new", newCloth(name))));
        String page = "/plan/buy?cloth=" + cloth + "&design=tunic&size=M-M&season=SUMMER";
        makesOne("/plan/sheets", form(page, "/plan/sheets"), "errand", cloth);
        assertThat(rows("cutting_plan", name)).isEqualTo(1);
    }

    /** A name by which what is made is told from what others made. */
    private static String named(String what) {
        return what + " " + UUID.randomUUID();
    }

    private Map<String, String> newCloth(String name) throws Exception {
        Map<String, String> form = form("/cloths/new?from=linen-plain-185", "/cloths/new");
        form.put("name", name);
        return form;
    }

    private static String idIn(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /** Sent by several clicks at once, and once more afterwards; what it makes is found in the table by that mark. */
    private void makesOne(String path, Map<String, String> form, String table, String mark) throws Exception {
        assertThat(form).containsKey("once");
        form.put("once", form.get("once").substring(0, 21) + "A");
        long before = rows(table, mark);
        Set<String> addresses = new HashSet<>();
        ExecutorService pool = Executors.newFixedThreadPool(AT_ONCE);
        try {
            Callable<HttpResponse<String>> click = () -> send(path, form);
            for (Future<HttpResponse<String>> answer : pool.invokeAll(Collections.nCopies(AT_ONCE, click))) {
                addresses.add(redirect(answer.get()));
            }
        } finally {
            pool.shutdown();
        }
        addresses.add(redirect(send(path, form)));
        assertThat(addresses).hasSize(1);
        assertThat(rows(table, mark)).isEqualTo(before + 1);
    }

    /** What a browser would send of the form that goes to that address. */
    private Map<String, String> form(String page, String action) throws Exception {
        String html = http.send(HttpRequest.newBuilder(uri(page)).build(), BodyHandlers.ofString())
                .body();
        String form = FORM.matcher(html)
                .results()
                .map(MatchResult::group)
                .filter(text -> text.contains("action=\"" + action + "\""))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no form for " + action + " in " + html));
        Map<String, String> fields = new LinkedHashMap<>();
        INPUT.matcher(form)
                .results()
                .map(MatchResult::group)
                .filter(tag -> !attribute(tag, "name").isEmpty())
                .filter(tag -> !List.of("checkbox", "radio", "file").contains(attribute(tag, "type"))
                        || tag.contains("checked"))
                .forEach(tag -> fields.put(attribute(tag, "name"), attribute(tag, "value")));
        SELECT.matcher(form).results().forEach(select -> {
            Matcher chosen = SELECTED.matcher(select.group(2));
            fields.put(attribute(select.group(1), "name"), chosen.find() ? attribute(chosen.group(1), "value") : "");
        });
        return fields;
    }

    private static String attribute(String tag, String name) {
        Matcher found = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(tag);
        return found.find() ? HtmlUtils.htmlUnescape(found.group(1)) : "";
    }

    private HttpResponse<String> send(String path, Map<String, String> form) throws IOException, InterruptedException {
        String body = form.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return http.send(
                HttpRequest.newBuilder(uri(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String redirect(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isBetween(300, 399);
        return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
    }

    /** How many rows of the table hold the mark anywhere. */
    private long rows(String table, String mark) {
        Long found = sql.queryForObject(
                "select count(*) from " + table + " as one where one::text like ?", Long.class, "%" + mark + "%");
        return found == null ? -1 : found;
    }

    private URI uri(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }
}
