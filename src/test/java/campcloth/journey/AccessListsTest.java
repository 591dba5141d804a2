package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Account;
import campcloth.journey.KeptThings.Kind;
import campcloth.journey.KeptThings.Thing;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Lists, searches, rankings and exports: what another keeps changes no letter of them, one's own and what is common stands in them. */
@HostedService
class AccessListsTest {

    private static final String CAMP = "/plan/cloths?season=SUMMER&design=tunic&size=M-M&show=500&showOut=500";
    private static final List<String> LISTS = List.of(
            "/api/cloths?size=100",
            "/api/cloths?text=somebody&size=100",
            "/api/cloths/export",
            "/api/export",
            "/api/cloths/completeness",
            "/api/cloths/linen-plain-185/alike?limit=50",
            "/api/jobs",
            "/api/tokens");
    private static final List<String> PAGES = List.of(
            "/",
            "/cloths?text=somebody",
            "/events",
            "/sheets",
            "/plan",
            CAMP,
            "/cloths/completeness",
            "/cloths/linen-plain-185",
            "/account");

    /** What differs from one time to the next by itself: times, and days, for it may be midnight. */
    private static final Pattern TIMES = Pattern.compile("\\d{4}-\\d{2}-\\d{2}(?:[T ]\\d{2}:\\d{2}[^\"<]*)?");

    private static final Pattern NAME = Pattern.compile("\"Linen of somebody (\\w+)\"");

    private static final long PATIENCE_SECONDS = 60;

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Autowired
    private KeptThings kept;

    @Autowired
    private HostedAccounts accounts;

    private ThingsOfAll things;
    private PageCalls pages;

    @BeforeEach
    void begin() {
        things = new ThingsOfAll(kept, accounts);
        pages = new PageCalls(port, things);
    }

    @Test
    void whatAnotherKeepsChangesNoLetter() {
        List<Knocker> askers = List.of(Knocker.MAKER, Knocker.KEEPER, Knocker.ADMINISTRATOR, Knocker.ONLY_MARSHAL);
        Map<Knocker, Map<String, String>> before = new LinkedHashMap<>();
        askers.forEach(who -> before.put(who, all(who)));
        Optional<Account> other = Optional.of(accounts.otherMaker());
        for (Kind kind :
                List.of(Kind.CLOTH, Kind.EVENT, Kind.CUTTING_PLAN, Kind.SHEET, Kind.SWATCH, Kind.JOB, Kind.TOKEN)) {
            kept.made(kind, other, false);
            if (kind.ways().contains(Whose.SHARED_WITH_ITS_KEY)) {
                kept.made(kind, other, true);
            }
        }
        awaitIndexed(Knocker.MARSHAL);
        for (Knocker who : askers) {
            Map<String, String> after = all(who);
            before.get(who)
                    .forEach((list, text) ->
                            assertThat(after.get(list)).as(who + " " + list).isEqualTo(text));
        }
    }

    @Test
    void onesOwnAndWhatIsCommonStandsThere() {
        for (Knocker who : List.of(Knocker.MAKER, Knocker.ADMINISTRATOR)) {
            Optional<Account> own = Optional.of(things.account(who));
            Thing cloth = add(Kind.CLOTH, own);
            Thing common = add(Kind.CLOTH, Optional.empty());
            Thing event = add(Kind.EVENT, own);
            Thing commonEvent = add(Kind.EVENT, Optional.empty());
            Thing sheet = add(Kind.SHEET, own);
            Thing plan = add(Kind.CUTTING_PLAN, own);
            Thing job = add(Kind.JOB, own);
            Thing token = add(Kind.TOKEN, own);
            await(who, cloth);
            await(who, common);
            assertThat(list(who, "/api/cloths/export")).contains(cloth.id(), common.id());
            assertThat(list(who, "/api/export")).contains(cloth.id(), event.id(), sheet.id(), plan.id());
            assertThat(list(who, "/api/jobs")).contains(job.id());
            assertThat(list(who, "/api/tokens")).contains(token.id());
            assertThat(pages.open(who, "/events").body()).contains(event.id(), commonEvent.id());
            assertThat(pages.open(who, "/sheets").body()).contains(sheet.id());
            for (Thing one : List.of(cloth, common)) {
                assertThat(pages.open(who, CAMP + "&text=" + wordOf(who, one)).body())
                        .contains(one.id());
            }
        }
    }

    /** Nothing stands in a list for who has only its link. */
    @Test
    void aLinkOpensOneThingAndNoList() {
        Thing cloth = kept.made(Kind.CLOTH, Optional.of(accounts.otherMaker()), true);
        Thing event = kept.made(Kind.EVENT, Optional.of(accounts.otherMaker()), true);
        String key = cloth.key().orElseThrow().text();
        for (String path :
                List.of("/api/cloths?size=100&text=somebody&key=", "/api/cloths/export?key=", "/api/export?key=")) {
            assertThat(list(Knocker.MAKER, path + key)).as(path).doesNotContain(cloth.id());
        }
        String both = "key=" + key + "&key=" + event.key().orElseThrow().text();
        for (String path : List.of("/events?", "/cloths?text=somebody&", CAMP + "&", "/plan?")) {
            assertThat(pages.open(Knocker.MAKER, path + both).body()).as(path).doesNotContain(cloth.id(), event.id());
        }
    }

    private Thing add(Kind kind, Optional<Account> owner) {
        return kept.made(kind, owner, false);
    }

    private Map<String, String> all(Knocker who) {
        Map<String, String> all = new LinkedHashMap<>();
        LISTS.forEach(path -> all.put(path, TIMES.matcher(list(who, path)).replaceAll("")));
        PAGES.forEach(path -> all.put(
                path, TIMES.matcher(PageCalls.told(pages.open(who, path))).replaceAll("")));
        return all;
    }

    /** The search index is written behind: what somebody adds after the others stands there only when they do. */
    private void awaitIndexed(Knocker who) {
        await(who, add(Kind.CLOTH, Optional.of(things.account(who))));
    }

    private void await(Knocker who, Thing cloth) {
        Awaitility.await()
                .atMost(PATIENCE_SECONDS, TimeUnit.SECONDS)
                .until(() ->
                        list(who, "/api/cloths?text=" + wordOf(who, cloth)).contains("\"id\":\"" + cloth.id() + "\""));
    }

    /** The word of its name that no other cloth has. */
    private String wordOf(Knocker who, Thing cloth) {
        Matcher name = NAME.matcher(list(who, "/api/cloths/" + cloth.id()));
        assertThat(name.find()).as("name of %s", cloth).isTrue();
        return name.group(1);
    }

    private String list(Knocker who, String path) {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                .header("Authorization", accounts.bearer(things.account(who)))
                .build();
        try {
            HttpResponse<byte[]> answer = http.send(request, BodyHandlers.ofByteArray());
            String text = answer.headers().firstValue("Content-Type").orElse("").equals("application/zip")
                    ? unpacked(answer.body())
                    : new String(answer.body(), StandardCharsets.UTF_8);
            return answer.statusCode() + text;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(path, stopped);
        }
    }

    private static String unpacked(byte[] packed) throws IOException {
        StringBuilder text = new StringBuilder();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packed))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                text.append(entry.getName()).append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return text.toString();
    }
}
