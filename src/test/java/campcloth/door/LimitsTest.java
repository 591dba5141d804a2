package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.Role;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;

/** How often may be asked, by a clock that is moved by hand. */
class LimitsTest {

    private static final Account ONE = account();
    private static final Account OTHER = account();

    private final Clockwork clock = new Clockwork();
    private final Limits limits = new Limits(10, 4, 2, clock);

    @Test
    void everybodyHasABucketOfTheirOwnThatFillsAgain() {
        assertThat(taken("GET", "/cloths", "192.0.2.1", ONE, 20)).isEqualTo(10);
        assertThat(taken("GET", "/cloths", "192.0.2.1", OTHER, 20)).isEqualTo(10);
        assertThat(taken("GET", "/cloths", "192.0.2.1", null, 20)).isEqualTo(10);
        assertThat(taken("GET", "/cloths", "192.0.2.2", null, 20)).isEqualTo(10);
        assertThat(limits.refusal(request("GET", "/cloths", "192.0.2.9"), ONE)
                        .orElseThrow()
                        .waitSeconds())
                .isEqualTo(6);
        clock.pass(Duration.ofSeconds(6));
        assertThat(taken("GET", "/cloths", "192.0.2.1", ONE, 20)).isEqualTo(1);
    }

    @Test
    void whatTakesLongMayBeAskedLessOften() {
        assertThat(taken("POST", "/api/advice", "192.0.2.1", ONE, 6)).isEqualTo(4);
        assertThat(taken("GET", "/cloths", "192.0.2.1", ONE, 6)).isEqualTo(4);
    }

    @Test
    void loginsAreCountedByAddressWhoeverAsks() {
        assertThat(taken("POST", "/login", "192.0.2.1", null, 3)).isEqualTo(2);
        assertThat(taken("POST", "/account/password", "192.0.2.1", ONE, 3)).isZero();
        assertThat(taken("GET", "/login", "192.0.2.1", null, 3)).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({"POST, /%6Cogin", "POST, /login", "POST, /account/%70assword", "GET, /oauth2/authorization/oidc"})
    void aLoginCountsHoweverItsAddressIsWritten(String method, String path) {
        assertThat(taken(method, path, "192.0.2.1", null, 5)).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/%61pi/advice", "/api/%65xport", "/plan/cl%6Fths"})
    void whatTakesLongCountsHoweverItsAddressIsWritten(String path) {
        assertThat(taken("GET", path, "192.0.2.1", ONE, 6)).isEqualTo(4);
    }

    @ParameterizedTest
    @CsvSource({
        "2001:db8:1:2::1, 2001:db8:1:2:ffff::9, true",
        "2001:db8:1:2::1, 2001:db8:1:3::1, false",
        "192.0.2.1, 192.0.2.2, false",
        "a name that nobody looks up, another, false"
    })
    void wholeNetworksOfTheSixthVersionAreOne(String one, String other, boolean same) {
        assertThat(Limits.network(one).equals(Limits.network(other))).isEqualTo(same);
    }

    @Test
    void aBoundedNumberIsKept() {
        Buckets buckets = new Buckets(2, 100, clock);
        for (int i = 0; i < 1000; i++) {
            buckets.take("often");
            buckets.take("once " + i);
        }
        assertThat(buckets.size()).isEqualTo(100);
        assertThat(buckets.take("often"))
                .as("who asks all the time is not forgotten")
                .isPresent();
    }

    private int taken(String method, String path, String address, @Nullable Account account, int times) {
        int taken = 0;
        for (int i = 0; i < times; i++) {
            if (limits.refusal(request(method, path, address), account).isEmpty()) {
                taken++;
            }
        }
        return taken;
    }

    private static MockHttpServletRequest request(String method, String path, String address) {
        MockHttpServletRequest request = new MockHttpServletRequest(method, path);
        request.setRemoteAddr(address);
        return request;
    }

    private static Account account() {
        return new Account(
                UUID.randomUUID(), new AccountName("somebody"), Set.of(Role.MAKER), false, false, 0, Instant.EPOCH, 0);
    }

    private static final class Clockwork implements TimeMeter {

        private long nanos;

        void pass(Duration time) {
            nanos += time.toNanos();
        }

        @Override
        public long currentTimeNanos() {
            return nanos;
        }

        @Override
        public boolean isWallClockBased() {
            return false;
        }
    }
}
