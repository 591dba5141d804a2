package campcloth.door;

import campcloth.access.Account;
import campcloth.access.TooOften;
import io.github.bucket4j.TimeMeter;
import jakarta.servlet.http.HttpServletRequest;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How often may be asked, for each account, and for each address of those who are not logged in: anything at all, what takes long to
 * compute, and logging in. Each instance counts for itself. The figures are project choices.
 */
final class Limits {

    static final int USUAL = 600;
    static final int USUAL_COSTLY = 60;
    static final int USUAL_LOGINS = 20;

    /** Enough for a big camp; about 200 bytes each. */
    private static final int MOST_KEPT = 20_000;

    private static final int NETWORK_BYTES = 8;
    private static final List<String> COSTLY = List.of(
            "/api/advice",
            "/api/layouts",
            "/api/cutting-plans",
            "/api/cloths/import",
            "/api/cloths/export",
            "/api/export",
            "/plan/cloths",
            "/plan/compare",
            "/plan/firmness",
            "/plan/sheets",
            "/cloths/import",
            "/sheets");
    private static final List<String> LOGIN = List.of("/login", "/account/password");

    /** Where logging in through a provider begins, with a session that is kept until it comes back. */
    private static final List<String> LOGIN_ELSEWHERE = List.of("/oauth2/authorization");

    private final Buckets all;
    private final Buckets costly;
    private final Buckets logins;

    Limits(int perMinute, int costlyPerMinute, int loginsPerMinute, TimeMeter time) {
        this.all = new Buckets(perMinute, MOST_KEPT, time);
        this.costly = new Buckets(costlyPerMinute, MOST_KEPT, time);
        this.logins = new Buckets(loginsPerMinute, MOST_KEPT, time);
    }

    /** What refuses a request, if it comes too often. */
    Optional<TooOften> refusal(HttpServletRequest request, @Nullable Account account) {
        String whose = account == null
                ? network(request.getRemoteAddr())
                : account.id().toString();
        Optional<Duration> wait = all.take(whose);
        if (wait.isEmpty() && Paths.isUnder(request, COSTLY)) {
            wait = costly.take(whose);
        }
        if (wait.isEmpty() && isLogin(request)) {
            wait = logins.take(network(request.getRemoteAddr()));
        }
        return wait.map(left -> new TooOften("Too many requests in a short time; nothing was done.", left));
    }

    private static boolean isLogin(HttpServletRequest request) {
        return Paths.isUnder(request, LOGIN_ELSEWHERE) || (!Paths.isReading(request) && Paths.isUnder(request, LOGIN));
    }

    /**
     * Of an address of IPv6 the network alone: whoever has one has all addresses in it. What is no address is taken as it is; a proxy
     * that tells names in its place shall not have them looked up.
     */
    static String network(String address) {
        if (address.indexOf(':') < 0) {
            return address;
        }
        try {
            InetAddress read = InetAddress.getByName(address);
            return read instanceof Inet6Address
                    ? Arrays.toString(Arrays.copyOf(read.getAddress(), NETWORK_BYTES))
                    : address;
        } catch (UnknownHostException noAddress) {
            return address;
        }
    }
}
