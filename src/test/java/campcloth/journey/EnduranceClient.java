package campcloth.journey;

import campcloth.journey.EnduranceLedger.Thing;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import tools.jackson.databind.json.JsonMapper;

/**
 * One who makes and changes things without a pause, and sends each of them again, under the same key, until it is acknowledged.
 * Only this one changes its things, so what was acknowledged last is what must stand there.
 */
final class EnduranceClient implements Runnable {

    private static final JsonMapper JSON = new JsonMapper();
    private static final Duration PATIENCE = Duration.ofSeconds(15);

    private final int number;
    private final int port;
    private final EnduranceLedger ledger;
    private final SplittableRandom random;
    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(3)).build();
    private final List<Thing> changeable = new ArrayList<>();
    private volatile boolean over;
    private int made;

    EnduranceClient(int number, int port, EnduranceLedger ledger, SplittableRandom random) {
        this.number = number;
        this.port = port;
        this.ledger = ledger;
        this.random = random;
    }

    void end() {
        over = true;
    }

    @Override
    public void run() {
        try {
            while (!over) {
                int dice = random.nextInt(100);
                if (dice < 25) {
                    make("cloth", "/api/cloths", mark -> "{\"name\": \"" + mark + "\", " + CLOTH + "}");
                } else if (dice < 50) {
                    make("event", "/api/events", mark -> "{\"name\": \"" + mark + "\", \"season\": \"SUMMER\"}");
                } else if (dice < 60) {
                    measure();
                } else if (dice < 63) {
                    make("cutting_plan", "/api/cutting-plans", mark -> PLAN.replace("MARK", mark));
                } else if (dice < 80) {
                    change();
                } else if (dice < 97) {
                    look();
                } else {
                    sent("POST", "/api/advice", ADVICE, "", "");
                }
                Thread.sleep(random.nextInt(30));
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private static final String CLOTH =
            "\"blend\": [{\"fibre\": \"wool\", \"percent\": 100}], \"weightGsm\": 300, \"widthCm\": 150";
    private static final String PLAN =
            "{\"cloth\": {\"name\": \"MARK\", \"blend\": [{\"fibre\": \"flax\", \"percent\": 100}],"
                    + " \"widthCm\": 140, \"weightGsm\": 200, \"shrinkWarpPercent\": 6, \"shrinkWeftPercent\": 4},"
                    + " \"garments\": [{\"design\": \"apron\", \"count\": 1}]}";
    private static final String ADVICE = "{\"event\": {\"season\": \"SUMMER\"}, \"garment\": {\"design\": \"tunic\"},"
            + " \"cloths\": {\"ids\": [\"linen-plain-185\", \"wool-plain-280\"]}}";
    private static final String SWATCH =
            "{\"note\": \"MARK\", \"washed\": {\"warp\": [{\"beforeCm\": 50, \"afterCm\": [47.3]}],"
                    + " \"weft\": [{\"beforeCm\": 50, \"afterCm\": [48.9]}]}}";

    private void make(String table, String address, java.util.function.UnaryOperator<String> body)
            throws InterruptedException {
        String mark = "mk-" + number + "-" + made++ + "-";
        HttpResponse<String> answer =
                sent("POST", address, body.apply(mark), UUID.randomUUID().toString(), "");
        if (answer.statusCode() / 100 == 2) {
            String path = answer.headers().firstValue("Location").orElse("");
            Thing thing = new Thing(table, mark, path, mark);
            ledger.acknowledged(thing);
            if (table.equals("cloth") || table.equals("event")) {
                changeable.add(thing);
            }
        }
    }

    private void measure() throws InterruptedException {
        List<Thing> cloths = changeable.stream()
                .filter(thing -> thing.table().equals("cloth"))
                .toList();
        if (!cloths.isEmpty()) {
            Thing cloth = cloths.get(random.nextInt(cloths.size()));
            make("cloth_swatch", cloth.path() + "/swatches", mark -> SWATCH.replace("MARK", mark));
        }
    }

    private void change() throws InterruptedException {
        if (changeable.isEmpty()) {
            return;
        }
        int which = random.nextInt(changeable.size());
        Thing before = changeable.get(which);
        HttpResponse<String> now = look(before);
        String name = before.mark() + "e" + ledger.edits.incrementAndGet();
        String rest = before.table().equals("cloth") ? CLOTH : "\"season\": \"WINTER\"";
        HttpResponse<String> answer = sent(
                "PUT",
                before.path(),
                "{\"name\": \"" + name + "\", " + rest + "}",
                UUID.randomUUID().toString(),
                now.headers().firstValue("ETag").orElse("\"0\""));
        boolean done = answer.statusCode() == 200
                || answer.statusCode() == 412 && name.equals(name(sent("GET", before.path(), "", "", "")));
        if (done) {
            Thing after = new Thing(before.table(), before.mark(), before.path(), name);
            changeable.set(which, after);
            ledger.acknowledged(after);
        } else {
            ledger.refused("edit neither written nor told apart, " + answer.statusCode());
        }
    }

    private void look() throws InterruptedException {
        if (!changeable.isEmpty()) {
            look(changeable.get(random.nextInt(changeable.size())));
        }
    }

    private HttpResponse<String> look(Thing thing) throws InterruptedException {
        HttpResponse<String> answer = sent("GET", thing.path(), "", "", "");
        if (!thing.name().equals(name(answer))) {
            ledger.wrongReads.increment();
            System.out.println("read " + thing + " as " + answer.statusCode() + " " + answer.body());
        }
        return answer;
    }

    private static String name(HttpResponse<String> answer) {
        return answer.statusCode() == 200
                ? JSON.readTree(answer.body()).path("name").asString("")
                : "";
    }

    /** Until it is answered by something else than that it cannot be done now. */
    private HttpResponse<String> sent(String method, String path, String body, String key, String ifMatch)
            throws InterruptedException {
        HttpRequest request = request(method, path, body, key, ifMatch);
        while (true) {
            ledger.requests.increment();
            long begun = System.nanoTime();
            try {
                HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
                if (answer.statusCode() < 500 && answer.statusCode() != 409 && answer.statusCode() != 429) {
                    if (answer.statusCode() / 100 == 2) {
                        ledger.answered((System.nanoTime() - begun) / 1000);
                    } else {
                        ledger.refused(Integer.toString(answer.statusCode()));
                    }
                    return answer;
                }
                ledger.refused(Integer.toString(answer.statusCode()));
                if (answer.statusCode() == 500) {
                    System.out.println("500 " + method + " " + path + " " + answer.body());
                }
            } catch (IOException broken) {
                ledger.refused(broken.getClass().getSimpleName());
            }
            ledger.retried.increment();
            Thread.sleep(200 + random.nextInt(300));
        }
    }

    private HttpRequest request(String method, String path, String body, String key, String ifMatch) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .timeout(PATIENCE)
                .method(
                        method,
                        body.isEmpty()
                                ? HttpRequest.BodyPublishers.noBody()
                                : HttpRequest.BodyPublishers.ofString(body));
        if (!body.isEmpty()) {
            request.header("Content-Type", "application/json");
        }
        if (!key.isEmpty()) {
            request.header("Idempotency-Key", key);
        }
        if (!ifMatch.isEmpty()) {
            request.header("If-Match", ifMatch);
        }
        return request.build();
    }
}
