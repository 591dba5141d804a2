package campcloth.rest;

import campcloth.access.Askers;
import campcloth.access.CallAnswer;
import campcloth.access.KeyedCall;
import campcloth.access.KeyedCalls;
import campcloth.access.KeyedCalls.Start;
import campcloth.access.NewIds;
import campcloth.access.Turn;
import campcloth.figure.Refused;
import campcloth.outage.Outage;
import campcloth.outage.Outages;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.dao.DataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Makes nothing twice where a call that makes something carries an {@link IdempotencyKey} and is sent again. Behind all other filters: it
 * is clear by then who asks, and that the body is none too large.
 */
@Component
@Order(Ordered.LOWEST_PRECEDENCE)
class SameCallOnce extends OncePerRequestFilter {

    static final String REPLAYED = "Idempotency-Replayed";

    private static final String RETRY_SECONDS = "5";

    private final KeyedCalls calls;
    private final NewIds ids;
    private final Askers askers;
    private final ProblemWriter problems;
    private final Outages outages;

    SameCallOnce(KeyedCalls calls, NewIds ids, Askers askers, ProblemWriter problems, Outages outages) {
        this.outages = outages;
        this.calls = calls;
        this.ids = ids;
        this.askers = askers;
        this.problems = problems;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return request.getHeader(IdempotencyKey.HEADER) == null
                || !CreatingCalls.isOne(request.getMethod(), request.getRequestURI());
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<String> key = key(request);
        if (key.isEmpty()) {
            FieldError error = new FieldError(
                    IdempotencyKey.HEADER,
                    "is no key; send 1 to 100 visible ASCII characters once, such as a UUID, in quotes or not");
            problems.write(
                    response,
                    Problems.fields(HttpStatus.BAD_REQUEST, "invalid", "A header is not of its form", List.of(error)));
            return;
        }
        try (PrintedBody body = PrintedBody.of(request)) {
            if (body.isTooLarge()) {
                problems.write(response, TooLarge.problem(BodyLimit.isList(request)));
                return;
            }
            KeyedCall call = new KeyedCall(askers.now(), request.getRequestURI(), key.get(), body.fingerprint());
            begin(call, body, response, chain);
        }
    }

    private static Optional<String> key(HttpServletRequest request) {
        List<String> told = Collections.list(request.getHeaders(IdempotencyKey.HEADER));
        try {
            return told.size() == 1 ? Optional.of(IdempotencyKey.read(told.get(0))) : Optional.empty();
        } catch (Refused refused) {
            return Optional.empty();
        }
    }

    private void begin(KeyedCall call, PrintedBody body, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Start start;
        try {
            start = calls.begin(call);
        } catch (DataAccessException | TransactionException away) {
            response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
            problems.write(response, Problems.outage(outages.of(away).orElse(Outage.DATABASE_AWAY)));
            return;
        }
        if (start instanceof Start.First first) {
            work(call, first.turn(), body, response, chain);
        } else if (start instanceof Start.Answered answered) {
            replay(answered.answer(), response);
        } else if (start instanceof Start.Running) {
            response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
            problems.write(response, Problems.keyBusy());
        } else {
            FieldError error = new FieldError(
                    IdempotencyKey.HEADER, "was sent before with something else; take a new key for each new call");
            problems.write(
                    response,
                    Problems.fields(
                            HttpStatus.UNPROCESSABLE_CONTENT, "key-used", "The key is used already", List.of(error)));
        }
    }

    private void work(KeyedCall call, Turn turn, PrintedBody body, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        RecordedAnswer recorded = new RecordedAnswer(response);
        boolean ended = false;
        try {
            ids.under(turn, () -> Passed.on(chain, body.again(), recorded)).orThrow();
            ended = true;
        } finally {
            settle(call, turn, ended ? recorded.getStatus() : HttpStatus.INTERNAL_SERVER_ERROR.value(), recorded);
        }
    }

    /** What cannot be kept now does no harm: the same call goes on from the same seed. */
    private void settle(KeyedCall call, Turn turn, int status, RecordedAnswer recorded) {
        try {
            if (HttpStatus.valueOf(status).is4xxClientError()) {
                calls.forget(call, turn);
            } else if (HttpStatus.valueOf(status).is2xxSuccessful()
                    && recorded.answer().isPresent()) {
                calls.answered(call, turn, recorded.answer().get());
            } else {
                calls.leave(call, turn);
            }
        } catch (DataAccessException | TransactionException away) {
            logger.warn("The answer of a call with a key could not be kept: " + away.getMessage());
        }
    }

    private static void replay(CallAnswer answer, HttpServletResponse response) throws IOException {
        response.setStatus(answer.status());
        answer.headers().forEach(response::setHeader);
        response.setHeader(REPLAYED, "true");
        response.getOutputStream().write(answer.body().getBytes(StandardCharsets.UTF_8));
    }
}
