package campcloth.pages;

import campcloth.access.Askers;
import campcloth.access.CallAnswer;
import campcloth.access.KeyedCall;
import campcloth.access.KeyedCalls;
import campcloth.access.KeyedCalls.Start;
import campcloth.access.NewIds;
import campcloth.access.TakenOver;
import campcloth.access.Turn;
import campcloth.figure.Refused;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;

/**
 * A form that makes something and is sent twice, by a double click or a resend, makes it once and leads to it both times. Each form
 * that is shown carries a random mark in its field {@value #FIELD}; the mark and all that was typed are the key. What is sent again
 * with something else in it makes something else.
 */
@Component
public class OnceOnly {

    /** The form's field. */
    static final String FIELD = "once";

    private static final Pattern MARK = Pattern.compile("[A-Za-z0-9_-]{22}");
    private static final int MARK_BYTES = 16;
    private static final String LOCATION = "Location";
    private static final long LOOK_MS = 100;
    private static final int LOOKS = 200;

    private final KeyedCalls calls;
    private final NewIds ids;
    private final Askers askers;
    private final HttpServletRequest request;
    private final SecureRandom random = new SecureRandom();

    /** @param request the one that this thread answers */
    OnceOnly(KeyedCalls calls, NewIds ids, Askers askers, HttpServletRequest request) {
        this.calls = calls;
        this.ids = ids;
        this.askers = askers;
        this.request = request;
    }

    /** A mark for a form that is shown. */
    String mark() {
        byte[] bits = new byte[MARK_BYTES];
        random.nextBytes(bits);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
    }

    /**
     * Makes something, unless this form made it before.
     *
     * @param making answers with the address of what it made
     * @return the address of what was made, now or before
     */
    public String made(Supplier<String> making) {
        Optional<KeyedCall> call = call();
        return call.isEmpty() ? making.get() : made(call.get(), making);
    }

    private String made(KeyedCall call, Supplier<String> making) {
        for (int i = 0; i < LOOKS; i++) {
            Start start = calls.begin(call);
            if (start instanceof Start.First first) {
                Optional<String> address = made(call, first.turn(), making);
                if (address.isPresent()) {
                    return address.get();
                }
            }
            if (start instanceof Start.Answered answered) {
                return String.valueOf(answered.answer().headers().get(LOCATION));
            }
            pause();
        }
        throw new ResponseStatusException(HttpStatus.CONFLICT);
    }

    /** Nothing where another instance has taken it over. */
    private Optional<String> made(KeyedCall call, Turn turn, Supplier<String> making) {
        try {
            String address = ids.under(turn, making);
            calls.answered(call, turn, new CallAnswer(HttpStatus.FOUND.value(), Map.of(LOCATION, address), ""));
            return Optional.of(address);
        } catch (TakenOver elsewhere) {
            calls.leave(call, turn);
            return Optional.empty();
        } catch (Refused refused) {
            calls.forget(call, turn);
            throw refused;
        } catch (RuntimeException | Error broken) {
            calls.leave(call, turn);
            throw broken;
        }
    }

    private Optional<KeyedCall> call() {
        return Optional.ofNullable(request.getParameter(FIELD))
                .filter(mark -> MARK.matcher(mark).matches())
                .map(mark -> {
                    String typed = typed();
                    return new KeyedCall(askers.now(), "page " + request.getRequestURI(), mark + typed, typed);
                });
    }

    /** All that was sent, in short. */
    private String typed() {
        MessageDigest digest = sha256();
        new TreeMap<>(request.getParameterMap()).forEach((name, values) -> {
            update(digest, name);
            for (String value : values) {
                update(digest, value);
            }
            update(digest, "");
        });
        return HexFormat.of().formatHex(digest.digest());
    }

    /** With its length before it, so that no two ways to divide the same signs look alike. */
    private static void update(MessageDigest digest, String text) {
        digest.update((text.length() + ":" + text).getBytes(StandardCharsets.UTF_8));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(LOOK_MS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new ResponseStatusException(HttpStatus.CONFLICT);
        }
    }
}
