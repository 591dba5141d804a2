package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Asker;
import campcloth.access.KeyedCall;
import campcloth.access.KeyedCalls;
import campcloth.access.Turn;
import java.net.http.HttpResponse;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.json.JsonMapper;

/** What may stand as the key of a call, and whose it is. */
@WholeService
class CallKeysTest {

    private static final JsonMapper JSON = new JsonMapper();

    private final String key = UUID.randomUUID().toString();

    @LocalServerPort
    private int port;

    @Autowired
    private KeyedCalls calls;

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\"\"", "\"a", "a\"b", "a b", "\"a b\"", "a\tb", "\"a\\b\""})
    void aKeyThatIsNoneIsRefused(String hostile) throws Exception {
        HttpResponse<String> answer;
        try {
            answer = post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, hostile);
        } catch (IllegalArgumentException notEvenAHeader) {
            return;
        }
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(JSON.readTree(answer.body()).at("/errors/0/field").asString())
                .isEqualTo("Idempotency-Key");
    }

    @Test
    void keysOfEveryVisibleSignAreKeysAndLongOrSeveralAreNone() throws Exception {
        String odd = "!#$%&'()*+,-./:;<=>?@[]^_`{|}~" + key;
        assertThat(post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, odd).statusCode())
                .isEqualTo(201);
        assertThat(post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, "\"\\\"\\\\" + key + "\"")
                        .statusCode())
                .isEqualTo(201);
        assertThat(post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, "x".repeat(101))
                        .statusCode())
                .isEqualTo(400);
        assertThat(new KeyedPosts(port)
                        .send("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key, key + "2")
                        .statusCode())
                .isEqualTo(400);
        assertThat(post("/api/events", " ".repeat(2 * 1024 * 1024), key).statusCode())
                .isEqualTo(413);
        assertThat(post("/api/fire", Bodies.FIRE_IN_AN_OUTFIT, "not looked at \u00e9".substring(0, 13))
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void keysOfDifferentAskersHaveNothingToDoWithEachOther() {
        KeyedCall one = new KeyedCall(Asker.of(UUID.randomUUID(), Set.of()), "x", key, "1");
        KeyedCall other = new KeyedCall(Asker.of(UUID.randomUUID(), Set.of()), "x", key, "2");
        Turn ofOne = begun(one);
        Turn ofOther = begun(other);
        assertThat(calls.begin(one)).isInstanceOf(KeyedCalls.Start.Running.class);
        calls.forget(one, ofOne);
        calls.forget(other, ofOther);
    }

    private Turn begun(KeyedCall call) {
        KeyedCalls.Start start = calls.begin(call);
        assertThat(start).isInstanceOf(KeyedCalls.Start.First.class);
        return ((KeyedCalls.Start.First) start).turn();
    }

    private HttpResponse<String> post(String path, String body, String withKey) throws Exception {
        return new KeyedPosts(port).send(path, body, withKey);
    }
}
