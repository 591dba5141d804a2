package campcloth.pages.shop;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.advice.Verdict;
import campcloth.event.Season;
import campcloth.fire.FireWarning;
import campcloth.journey.WholeService;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.MessageSource;

/** What the shop's page answers, over HTTP. */
@WholeService
class ShopRoadTest {

    private static final String TUNIC = "&design=tunic&size=W-M&season=SUMMER";
    private static final Pattern VERDICT = Pattern.compile("class=\"verdict verdict-(\\w+)\"");

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Autowired
    private MessageSource texts;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "wool",
                "80% AC 20% WO",
                "100% wool 20% silk",
                "100 % quiviut-like",
                "<script>alert(1)</script>",
                "\"'><svg onload=alert(1)>",
                "\u202e100% wool",
                "__${7*7}__ ${7*7} #{shop.title}"
            })
    void aLabelThatCannotBeReadStandsNoBetterThanUnknownCloth(String label) {
        String unknown = answered("label=" + TUNIC);
        String unread = answered("label=" + encoded(label) + TUNIC);
        assertThat(verdict(unread)).isGreaterThanOrEqualTo(verdict(unknown));
        assertThat(unread)
                .contains("<mark>", "cannot be read without guessing")
                .doesNotContain("<script>alert", "<svg");
    }

    @Test
    void aWordOfTenThousandLettersIsRefusedOnThePage() {
        String page = answered("label=" + "x".repeat(10_000) + TUNIC);
        assertThat(verdict(page)).isEqualTo(Verdict.RULED_OUT);
        assertThat(page).contains("the text has 10000 characters");
    }

    @Test
    void whatIsNotBelievedDoesNotCount() {
        assertThat(verdict(answered("label=100%25+wool&weightGsm=400&unlabelled=true" + TUNIC)))
                .isEqualTo(Verdict.RULED_OUT);
        assertThat(verdict(answered("label=100%25+wool&weightGsm=400" + TUNIC))).isNotEqualTo(Verdict.RULED_OUT);
    }

    @Test
    void theWorstPartStandsForTheWhole() {
        String whole = answered("label=" + encoded("shell: 100% wool; lining: 100% polyester") + TUNIC);
        assertThat(verdict(whole)).isEqualTo(verdict(answered("label=" + encoded("100% polyester") + TUNIC)));
        assertThat(whole).contains("Each part was judged by itself");
    }

    @ParameterizedTest
    @CsvSource({
        "label=x&design=tunic, is not chosen",
        "label=x&season=SUMMER, is not chosen",
        "label=x&design=tunic&season=SUMMER&widthCm=3, give a number from 10 to 400 cm",
        "label=x&design=tunic&season=SUMMER&widthCm=wide, Write a number",
        "label=x&design=tunic&season=SUMMER&language=xx, is not a language"
    })
    void whatCannotBeUsedIsToldOnTheForm(String query, String told) {
        HttpResponse<String> response = get("/shop?" + query);
        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(response.body()).contains("id=\"errors\"", told).doesNotContain("id=\"answer\"");
    }

    @Test
    void whatWasToldBeforeGoesAlong() {
        String page = answered("label=100%25+wool&measures%5BchestCm%5D=98.5&evening.fireRole=NONE&nextToSkin=no"
                + "&measures%5B%24%7B7*7%7D%5D=3" + TUNIC);
        assertThat(page)
                .contains("name=\"measures[chestCm]\" value=\"98.5\"", "name=\"evening.fireRole\" value=\"NONE\"")
                .doesNotContain("name=\"measures[$");
    }

    @Test
    void usesBeyondUsGetNoVerdict() {
        String page = answered("label=100%25+wool&use=PYROTECHNICS" + TUNIC);
        assertThat(VERDICT.matcher(page).find()).isFalse();
        assertThat(page).contains("a licensed pyrotechnician");
    }

    @Test
    void decimalCommasAndYardsGiveTheSameLength() {
        String metric = answered("label=100%25+wool&widthCm=152,4&pricePerMetre=10" + TUNIC);
        String imperial = answered("label=100%25+wool&widthCm=60&pricePerMetre=9.144&typedIn=imperial" + TUNIC);
        assertThat(length(metric)).isEqualTo(length(imperial));
        assertThat(metric).contains(" EUR</strong>");
    }

    @Test
    void keptAndPlannedWithTheSameQuestion() {
        HttpResponse<String> response =
                post("/shop/keep?label=100%25+linen&weightGsm=220" + TUNIC, "name=Leinen&then=plan");
        assertThat(response.statusCode()).isEqualTo(302);
        assertThat(response.headers().firstValue("Location").orElseThrow())
                .contains("/plan/buy?cloth=")
                .contains("design=tunic", "size=W-M", "season=SUMMER");
        String id = response.headers().firstValue("Location").orElseThrow().replaceAll(".*cloth=([^&]*).*", "$1");
        assertThat(get("/api/cloths/" + id).body())
                .contains("\"Leinen\"", "flax", "Seen in a shop. Its label: 100% linen");
    }

    @Test
    void whatCannotBeUsedIsNotKept() {
        HttpResponse<String> response = post("/shop/keep?label=100%25+linen&design=tunic", "name=Leinen");
        assertThat(response.headers().firstValue("Location").orElseThrow()).contains("/shop?label=100%25+linen");
    }

    @Test
    void everyWarningAndChoiceHasItsShortText() {
        Stream.concat(
                        Stream.of(FireWarning.Code.values()).map(Enum::name),
                        Stream.of("STRETCH", "HEAT_STRAIN", "COLD", "OUT_OF_MODEL"))
                .forEach(code -> assertThat(text("shop.caution." + code)).isNotBlank());
        String form = get("/shop").body();
        for (Enum<?>[] values : List.<Enum<?>[]>of(
                ShopForm.Face.values(), ShopForm.Bound.values(), ShopForm.Done.values(), Season.values())) {
            for (Enum<?> value : values) {
                assertThat(form).contains("value=\"" + value.name() + "\"");
            }
        }
    }

    private String text(String key) {
        return texts.getMessage(key, new Object[] {"1"}, Locale.ENGLISH);
    }

    private static Verdict verdict(String page) {
        Matcher found = VERDICT.matcher(page);
        assertThat(found.find()).isTrue();
        return Verdict.valueOf(found.group(1));
    }

    private static String length(String page) {
        return page.replaceAll("(?s).*class=\"shop-figure\">([^<]*)<.*", "$1");
    }

    private String answered(String query) {
        HttpResponse<String> response = get("/shop?" + query);
        assertThat(response.statusCode()).isEqualTo(200);
        return response.body();
    }

    private HttpResponse<String> get(String path) {
        return sent(request(path).GET().build());
    }

    private HttpResponse<String> post(String path, String body) {
        return sent(request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
    }

    private HttpResponse<String> sent(HttpRequest request) {
        try {
            return http.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (IOException failure) {
            throw new AssertionError(request.uri().toString(), failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
