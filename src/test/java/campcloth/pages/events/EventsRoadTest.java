package campcloth.pages.events;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.FireRole;
import campcloth.event.KeptEvent;
import campcloth.event.OpenFire;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.journey.WholeService;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Pages of events as a server answers them: what is not there, what is forged, what is too long, what is out of date. */
@WholeService
class EventsRoadTest {

    private static final String NOBODY = "00000000-0000-4000-8000-000000000000";

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Autowired
    private Events events;

    @Autowired
    private Seasons seasons;

    @ParameterizedTest
    @ValueSource(strings = {"", "/edit", "/remove", "/fire-rules", "/pictures/fire.svg", "/rules/0"})
    void whatIsNotThereIsToldOnAPage(String part) throws Exception {
        assertThat(get("/events/" + NOBODY + part).statusCode()).isEqualTo(404);
        assertThat(get("/events/no-id" + part).statusCode()).isEqualTo(404);
    }

    @Test
    void aWordOfTenThousandLettersIsRefusedAtItsFieldAndComesBackWhole() throws Exception {
        String word = "w".repeat(10_000);
        HttpResponse<String> answer = post("/events/new", Map.of("name", word, "season", "SUMMER"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("id=\"name-wrong\"", word, "id=\"errors\"");
    }

    @Test
    void aForgedRowIsRefusedAsABadAddress() throws Exception {
        HttpResponse<String> answer = post("/events/new", Map.of("spells[5000].name", "x", "season", "SUMMER"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("<h1>");
    }

    @Test
    void removingWhatSomebodyChangedAsksOnceMore() throws Exception {
        KeptEvent kept = events.add(event("Wendlow"));
        events.replace(kept.id(), kept.version(), kept.event().at(52));
        HttpResponse<String> stale = post("/events/" + kept.id() + "/remove", Map.of("version", "0"));
        assertThat(stale.statusCode()).isEqualTo(409);
        assertThat(events.byId(kept.id())).isPresent();
        assertThat(post("/events/" + kept.id() + "/remove", Map.of("version", "1"))
                        .statusCode())
                .isEqualTo(302);
        assertThat(events.byId(kept.id())).isEmpty();
    }

    @Test
    void whatIsTypedForARemovedEventBecomesANewOne() throws Exception {
        KeptEvent kept = events.add(event("Wendlow"));
        events.remove(kept.id(), kept.version());
        HttpResponse<String> answer = post(
                "/events/" + kept.id() + "/edit",
                Map.of(
                        "version",
                        "0",
                        "name",
                        "Typed for nothing",
                        "season",
                        "SUMMER",
                        "spells[0].name",
                        "noon",
                        "spells[0].hours",
                        "3",
                        "spells[0].airC",
                        "20",
                        "spells[0].humidityPercent",
                        "50",
                        "spells[0].windMs",
                        "1",
                        "spells[0].activity",
                        "WALKING"));
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("Typed for nothing", "action=\"/events/new\"");
    }

    @Test
    void thePictureOfTheFiresIsADrawingAndThereIsOneForEachSize() throws Exception {
        KeptEvent kept = events.add(event("Wendlow"));
        HttpResponse<String> picture = get("/events/" + kept.id() + "/pictures/fire.svg");
        assertThat(picture.statusCode()).isEqualTo(200);
        assertThat(picture.headers().firstValue("Content-Type").orElseThrow()).startsWith("image/svg+xml");
        assertThat(picture.body()).contains("<svg", "50 kW");
        assertThat(get("/events/" + kept.id() + "/pictures/fire.svg?fire=1").statusCode())
                .isEqualTo(404);
        assertThat(get("/events/" + kept.id() + "/pictures/fire.svg?fire=-1").statusCode())
                .isEqualTo(404);
    }

    @Test
    void theNewestChangeStandsFirstAndPagesLeaveNothingOut() {
        List<String> added = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            added.add(0, events.add(event("Camp " + i)).id());
        }
        List<String> listed = new ArrayList<>();
        for (int page = 0; page < 3; page++) {
            events.latest(page, 3).events().forEach(kept -> listed.add(kept.id()));
        }
        assertThat(listed).startsWith(added.toArray(String[]::new)).doesNotHaveDuplicates();
        assertThat(events.latest(100_000, 3).events()).isEmpty();
    }

    @Test
    void theNewestIsThereToPlanForHoweverManyOlderOnesThereAre() throws Exception {
        List<KeptEvent> added = new ArrayList<>();
        try {
            for (int i = 0; i <= 200; i++) {
                added.add(events.add(event("Old camp " + i)));
            }
            KeptEvent newest = added.get(added.size() - 1);
            assertThat(get("/plan").body()).contains("value=\"" + newest.id() + "\"");
        } finally {
            added.forEach(kept -> events.remove(kept.id(), kept.version()));
        }
    }

    private Event event(String name) {
        OpenFire fire = new OpenFire(FireRole.SEATED, Optional.of(2.0), Optional.of(50.0));
        return new Event(
                name,
                Season.SUMMER,
                seasons.spells(Season.SUMMER).stream()
                        .map(spell -> spell.fire().isPresent() ? spell.withFire(fire) : spell)
                        .toList(),
                List.of());
    }

    private HttpResponse<String> get(String path) throws Exception {
        return http.send(request(path).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, Map<String, String> form) throws Exception {
        String body = form.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return http.send(
                request(path)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
