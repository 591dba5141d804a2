package campcloth.journey;

import campcloth.access.ShareKey;
import campcloth.journey.AccessTable.Row;
import campcloth.journey.KeptThings.Kind;
import campcloth.journey.KeptThings.Thing;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Pages as everybody in the table opens and sends them, each in a browser of their own. */
final class PageCalls {

    private static final String GET = "GET ";
    private static final String DENIED = "denied";

    /** In what is sent, where the thing is named within another field. */
    private static final String THING = "{THING}";

    private static final Pattern SAID = Pattern.compile("<main.*?</main>", Pattern.DOTALL);
    private static final Pattern CHANGING =
            Pattern.compile("[0-9a-f]{8}-[0-9a-f-]{27}|key=[\\w-]{22}|name=\"(?:_csrf|once)\" value=\"[^\"]+\"");

    private static final Map<Kind, String> FAMILIES =
            Map.of(Kind.EVENT, "events", Kind.SHEET, "sheets", Kind.CLOTH, "cloths");

    private final int port;
    private final ThingsOfAll things;
    private final Map<Knocker, Browsing> browsers = new EnumMap<>(Knocker.class);
    private final Map<Knocker, Optional<String>> tokens = new EnumMap<>(Knocker.class);
    private final Map<String, Map<String, String>> forms = new HashMap<>();

    PageCalls(int port, ThingsOfAll things) {
        this.port = port;
        this.things = things;
    }

    HttpResponse<String> send(Row row, Knocker who, Optional<Thing> thing, Whose whose) {
        String key = thing.map(named -> things.shown(named, whose)).orElse("");
        return send(row, who, thing, key, token(who));
    }

    /** A form sent without its token. */
    HttpResponse<String> withoutToken(Row row, Knocker who, Optional<Thing> thing, Whose whose) {
        String key = thing.map(named -> things.shown(named, whose)).orElse("");
        return send(row, who, thing, key, Optional.empty());
    }

    /** With a key that opens nothing. */
    HttpResponse<String> withAnyKey(Row row, Knocker who) {
        return send(
                row, who, Optional.empty(), ShareKey.random(new SecureRandom()).text(), token(who));
    }

    HttpResponse<String> open(Knocker who, String path) {
        return browser(who).get(path);
    }

    private HttpResponse<String> send(Row row, Knocker who, Optional<Thing> thing, String key, Optional<String> token) {
        Map<String, String> query = new LinkedHashMap<>();
        if (!key.isEmpty()) {
            query.put("key", key);
        }
        if (row.place().startsWith("?")) {
            thing.ifPresent(named -> query.put(row.place().substring(1), named.id()));
        }
        String path = path(row, who, thing);
        String sent = filled(
                        row.sent().startsWith(DENIED)
                                ? row.sent().substring(DENIED.length()).strip()
                                : row.sent())
                .replace(THING, thing.map(Thing::id).orElse(""));
        if (row.what().startsWith(GET) || row.what().startsWith("ANY ")) {
            return browser(who).get(path + joined(encoded(query), sent));
        }
        Map<String, String> fields = fields(sent);
        query.keySet().forEach(fields::remove);
        return browser(who).post(path + joined(encoded(query), ""), fields, token);
    }

    private String path(Row row, Knocker who, Optional<Thing> thing) {
        String path = row.what().substring(row.what().indexOf(' ') + 1);
        Thing about = row.place().equals("path") && thing.isPresent() ? thing.get() : ofOnesOwn(path, who);
        return path.replaceAll("\\{family[^}]*}", FAMILIES.getOrDefault(about.kind(), "events"))
                .replaceAll("\\{version:.*}$", "0")
                .replace("{design}/{key}", "tunic/chestCm")
                .replace("{swatchId}", about.id())
                .replace("{id}", about.within());
    }

    /** Where a page about one thing names another. */
    private Thing ofOnesOwn(String path, Knocker who) {
        return path.contains("{id}") && path.startsWith("/events")
                ? things.of(Kind.EVENT, who.isStranger() ? Knocker.MAKER : who, Whose.OWN)
                : KeptThings.nowhere(Kind.CLOTH);
    }

    private String filled(String sent) {
        return sent.replace("{EVENT}", sent.contains("{EVENT}") ? common(Kind.EVENT) : "")
                .replace("{CLOTH}", sent.contains("{CLOTH}") ? common(Kind.CLOTH) : "");
    }

    private String common(Kind kind) {
        return things.of(kind, Knocker.MAKER, Whose.COMMON).id();
    }

    /** The fields of the form that is named first, where one is, and those that are typed. */
    private Map<String, String> fields(String sent) {
        Map<String, String> fields = new LinkedHashMap<>();
        String typed = sent;
        if (sent.startsWith("/")) {
            int end = sent.indexOf(' ');
            fields.putAll(forms.computeIfAbsent(sent.substring(0, end), this::form));
            typed = sent.substring(end + 1);
        }
        if (!typed.isEmpty()) {
            for (String pair : typed.split("&")) {
                fields.put(
                        pair.substring(0, pair.indexOf('=')),
                        URLDecoder.decode(pair.substring(pair.indexOf('=') + 1), StandardCharsets.UTF_8));
            }
        }
        return fields;
    }

    /** What a keeper's browser would send of the forms of that page. */
    private Map<String, String> form(String page) {
        Map<String, String> fields =
                FormFields.of(browser(Knocker.KEEPER).get(page).body());
        fields.remove("_csrf");
        fields.remove("once");
        return fields;
    }

    private Browsing browser(Knocker who) {
        return browsers.computeIfAbsent(
                who,
                one -> one.isStranger()
                        ? new Browsing(port)
                        : Browsing.as(port, things.account(one).name().text()));
    }

    private Optional<String> token(Knocker who) {
        return tokens.computeIfAbsent(
                who,
                one -> Browsing.csrf(browser(one)
                        .get(one.isStranger() ? "/login" : "/account")
                        .body()));
    }

    private static String encoded(Map<String, String> query) {
        return query.entrySet().stream()
                .map(one -> one.getKey() + "=" + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    private static String joined(String query, String more) {
        String all = query.isEmpty() || more.isEmpty() ? query + more : query + "&" + more;
        return all.isEmpty() ? "" : "?" + all;
    }

    /** What a page tells, but for what differs each time. */
    static String told(HttpResponse<String> answer) {
        return answer.statusCode() + CHANGING.matcher(answer.body()).replaceAll("");
    }

    /** The words in its middle, to be read in a failure. */
    static String said(HttpResponse<String> answer) {
        Matcher main = SAID.matcher(answer.body());
        String words = main.find() ? main.group().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ") : "";
        return words.substring(0, Math.min(200, words.length()));
    }
}
