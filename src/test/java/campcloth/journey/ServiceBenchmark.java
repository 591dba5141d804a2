package campcloth.journey;

import campcloth.event.Events;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.TestPropertySource;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/**
 * Run by hand ({@code mvn test -Dtest=ServiceBenchmark}): requests a second and how long they take, over HTTP on the loopback address,
 * with one client and with eight, each beside a controller of the same program that does nothing: the same server, filters and
 * JSON. Every request asks something else, so that no answer could be a kept one. Rounds of both alternate; printed are medians of
 * the rounds. Asserts nothing.
 */
@WholeService
@Import(ServiceBenchmark.Nothing.class)
@TestPropertySource(properties = "campcloth.demo=true")
class ServiceBenchmark {

    private static final int ROUNDS = 5;
    private static final double SECONDS = Double.parseDouble(System.getProperty("seconds", "4"));
    private static final double WARM_UP_SECONDS = 2 * SECONDS;

    private final HttpClient http =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final AtomicInteger number = new AtomicInteger();

    @LocalServerPort
    private int port;

    @Autowired
    private Events events;

    /** Reads what is sent and answers as little as there is. */
    @RestController
    @TestConfiguration
    static class Nothing {

        @GetMapping("/api/nothing")
        Map<String, String> get() {
            return Map.of("nothing", "there");
        }

        @PostMapping("/api/nothing")
        Map<String, String> post(@RequestBody Map<String, Object> body) {
            return Map.of("nothing", body.isEmpty() ? "sent" : "done");
        }
    }

    private record Round(double aSecond, double medianMs, double p99Ms, int refused) {}

    @Test
    void besideAControllerThatDoesNothing() throws Exception {
        String asked =
                "event=" + events.latest(0, 1).events().get(0).id() + "&design=tunic&size=M-M&measures%5BchestCm%5D=";
        for (int clients : new int[] {1, 8}) {
            compare("advice, whole catalogue", clients, n -> post("/api/advice", advice(n)), n -> nothing(advice(n)));
            compare("cutting plan", clients, n -> post("/api/cutting-plans", plan(n)), n -> nothing(plan(n)));
            compare("page: cloths ranked", clients, n -> get("/plan/cloths?" + asked + chest(n)), n -> nothing());
            compare("page: search", clients, n -> get("/cloths?text=linen&weightFrom=" + n % 90), n -> nothing());
            compare("one cloth", clients, n -> get("/api/cloths/linen-plain-185-washed?n=" + n), n -> nothing());
        }
    }

    private void compare(String what, int clients, IntFunction<HttpRequest> asked, IntFunction<HttpRequest> nothing)
            throws InterruptedException {
        run(clients, WARM_UP_SECONDS, nothing);
        run(clients, WARM_UP_SECONDS, asked);
        List<Round> ours = new ArrayList<>();
        List<Round> empty = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            empty.add(run(clients, SECONDS, nothing));
            ours.add(run(clients, SECONDS, asked));
        }
        Round us = median(ours);
        Round none = median(empty);
        System.out.printf(
                Locale.ROOT,
                "%-24s %d client(s): %8.1f/s, median %7.1f ms, 99 %% within %7.1f ms, refused %d"
                        + " | nothing: %8.1f/s, median %5.2f ms, 99 %% %6.2f ms | %6.1f times fewer, median %6.1f times%n",
                what,
                clients,
                us.aSecond(),
                us.medianMs(),
                us.p99Ms(),
                us.refused(),
                none.aSecond(),
                none.medianMs(),
                none.p99Ms(),
                none.aSecond() / us.aSecond(),
                us.medianMs() / none.medianMs());
    }

    private Round run(int clients, double seconds, IntFunction<HttpRequest> requests) throws InterruptedException {
        List<Double> times = new ArrayList<>();
        AtomicInteger refused = new AtomicInteger();
        long begun = System.nanoTime();
        long end = begun + (long) (seconds * 1e9);
        List<Thread> threads = new ArrayList<>();
        for (int client = 0; client < clients; client++) {
            Thread thread = new Thread(() -> {
                List<Double> mine = new ArrayList<>();
                while (System.nanoTime() < end) {
                    long start = System.nanoTime();
                    if (!isAnswered(requests.apply(number.incrementAndGet()))) {
                        refused.incrementAndGet();
                    }
                    mine.add((System.nanoTime() - start) / 1e6);
                }
                synchronized (times) {
                    times.addAll(mine);
                }
            });
            thread.start();
            threads.add(thread);
        }
        for (Thread thread : threads) {
            thread.join();
        }
        double took = (System.nanoTime() - begun) / 1e9;
        double[] sorted =
                times.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return new Round(
                sorted.length / took, sorted[sorted.length / 2], sorted[sorted.length * 99 / 100], refused.get());
    }

    private boolean isAnswered(HttpRequest request) {
        try {
            return http.send(request, HttpResponse.BodyHandlers.ofByteArray()).statusCode() < 300;
        } catch (IOException failed) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Each figure by itself. */
    private static Round median(List<Round> rounds) {
        double[] aSecond = rounds.stream().mapToDouble(Round::aSecond).sorted().toArray();
        double[] median = rounds.stream().mapToDouble(Round::medianMs).sorted().toArray();
        double[] p99 = rounds.stream().mapToDouble(Round::p99Ms).sorted().toArray();
        int middle = rounds.size() / 2;
        return new Round(
                aSecond[middle],
                median[middle],
                p99[middle],
                rounds.stream().mapToInt(Round::refused).sum());
    }

    private static String advice(int n) {
        return Bodies.ADVICE.replace("\"airC\": 27", "\"airC\": " + (15 + n % 200 / 10.0));
    }

    private static String plan(int n) {
        return Bodies.CUTTING_PLAN.replace(
                "\"finishedChestCm\": 126", "\"finishedChestCm\": " + (100 + n % 300 / 10.0));
    }

    private static String chest(int n) {
        return Double.toString(90 + n % 300 / 10.0);
    }

    private HttpRequest nothing() {
        return get("/api/nothing");
    }

    private HttpRequest nothing(String body) {
        return post("/api/nothing", body);
    }

    private HttpRequest get(String path) {
        return HttpRequest.newBuilder(uri(path)).build();
    }

    private HttpRequest post(String path, String json) {
        return HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json))
                .build();
    }

    private URI uri(String path) {
        return URI.create("http://localhost:" + port + path);
    }
}
