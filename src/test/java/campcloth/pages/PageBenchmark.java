package campcloth.pages;

import campcloth.event.Events;
import campcloth.journey.WholeService;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/**
 * Run by hand ({@code mvn test -Dtest=PageBenchmark}): how long each page takes on the catalogue with the demo, one reader at a time,
 * beside a page of the same frame that asks nothing (an address where nothing is). The chest differs in every request, so that no
 * answer could be a kept one. Prints median, 95th percentile, greatest, and the ratio of medians; asserts nothing.
 */
@WholeService
@TestPropertySource(properties = "campcloth.demo=true")
class PageBenchmark {

    private static final int WARM_UP = 40;
    private static final int RUNS = 200;
    private static final String BASELINE = "/nowhere";

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Autowired
    private Events events;

    @Test
    void pages() throws Exception {
        String event = events.latest(0, 1).events().get(0).id();
        String asked = "event=" + event + "&design=tunic&size=M-M&measures%5BchestCm%5D=";
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("nothing there", BASELINE);
        pages.put("first page", "/");
        pages.put("plan a garment", "/plan?" + asked);
        pages.put("cloths ranked", "/plan/cloths?" + asked);
        pages.put("two side by side", "/plan/compare?cloth=linen-plain-185-washed&cloth=polycotton-65-35-200&" + asked);
        pages.put("what the shop tells", "/plan/buy?cloth=linen-plain-185-washed&" + asked);
        pages.put("plan sheet", sheet(asked + "98"));
        pages.put("sheets", "/sheets");
        pages.put("at the shop", "/shop?label=65%2F35+polyester%2Fcotton&weightGsm=200&widthCm=150&" + asked);
        pages.put("search", "/cloths?text=linen");
        pages.put("one cloth", "/cloths/linen-plain-185-washed");
        pages.put("burn test", "/burn-test?warp.residue=hard-bead");
        pages.put("events", "/events");
        pages.put("one event", "/events/" + event);
        pages.put("fire rules", "/events/" + event + "/fire-rules");
        pages.put("how firm the order is", "/plan/firmness?" + asked);
        pages.put("plan sheet as PDF", pages.get("plan sheet") + ".pdf");
        double[] baseline = times(BASELINE);
        for (Map.Entry<String, String> page : pages.entrySet()) {
            print(page.getKey(), times(page.getValue()), baseline);
        }
    }

    private double[] times(String path) throws IOException, InterruptedException {
        double[] times = new double[RUNS];
        int refused = 0;
        for (int run = -WARM_UP; run < RUNS; run++) {
            String address = path.endsWith("=") ? path + (90 + (run + WARM_UP) % 30) : path;
            long start = System.nanoTime();
            HttpResponse<byte[]> answer =
                    http.send(HttpRequest.newBuilder(uri(address)).build(), HttpResponse.BodyHandlers.ofByteArray());
            if (run >= 0) {
                times[run] = (System.nanoTime() - start) / 1e6;
            }
            refused += answer.statusCode() == 200 || path.equals(BASELINE) ? 0 : 1;
        }
        if (refused > 0) {
            System.out.println(refused + " answers were no pages: " + path);
        }
        Arrays.sort(times);
        return times;
    }

    private static void print(String name, double[] times, double[] baseline) {
        System.out.printf(
                Locale.ROOT,
                "%-22s median %6.1f ms, 95 %% within %6.1f ms, greatest %6.1f ms, %5.1f times the frame alone%n",
                name,
                times[times.length / 2],
                times[times.length * 95 / 100],
                times[times.length - 1],
                times[times.length / 2] / baseline[baseline.length / 2]);
    }

    private String sheet(String asked) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(uri("/plan/sheets"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(
                        "cloth=linen-plain-185-washed&count=1&fold=ANY&sewnBy=MACHINE&asked="
                                + URLEncoder.encode(asked, StandardCharsets.UTF_8)))
                .build();
        HttpResponse<Void> answer = http.send(request, HttpResponse.BodyHandlers.discarding());
        return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
    }

    private URI uri(String path) {
        return URI.create("http://localhost:" + port + path);
    }
}
