package campcloth.rest;

import campcloth.access.NotAllowed;
import campcloth.access.NotLoggedIn;
import campcloth.access.TakenOver;
import campcloth.access.TooOften;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.job.Busy;
import campcloth.job.TooManyJobs;
import campcloth.outage.Outage;
import campcloth.outage.Outages;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.TypeMismatchException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.bind.MethodArgumentNotValidException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;

/** Turns everything that can go wrong into a problem document; the one place where failures get a status. */
@RestControllerAdvice
class ProblemAdvice extends ResponseEntityExceptionHandler {

    private static final Logger LOG = LoggerFactory.getLogger(ProblemAdvice.class);
    private static final String RETRY_SECONDS = "5";

    private final Outages outages;

    ProblemAdvice(Outages outages) {
        this.outages = outages;
    }

    @ExceptionHandler
    ProblemDetail refused(Refused refused) {
        return Problems.refused(refused);
    }

    @ExceptionHandler
    ProblemDetail outside(Outside outside) {
        return Problems.outside(outside.field(), outside.boundary());
    }

    @ExceptionHandler
    ProblemDetail tooLarge(TooLarge list) {
        return TooLarge.problem(true);
    }

    @ExceptionHandler
    ProblemDetail missing(Missing missing) {
        return Problems.problem(HttpStatus.NOT_FOUND, "not-found", "Not found", String.valueOf(missing.getMessage()));
    }

    @ExceptionHandler
    ProblemDetail notAllowed(NotAllowed notAllowed) {
        return Problems.problem(
                HttpStatus.FORBIDDEN, "not-allowed", "Not allowed", String.valueOf(notAllowed.getMessage()));
    }

    @ExceptionHandler
    ProblemDetail precondition(Precondition precondition) {
        return precondition.isStale()
                ? Problems.problem(
                        HttpStatus.PRECONDITION_FAILED,
                        "stale",
                        "Changed in between",
                        String.valueOf(precondition.getMessage()))
                : Problems.problem(
                        HttpStatus.PRECONDITION_REQUIRED,
                        "if-match-needed",
                        "If-Match is needed",
                        String.valueOf(precondition.getMessage()));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> notLoggedIn(NotLoggedIn stranger) {
        return ResponseEntity.status(HttpStatus.UNAUTHORIZED)
                .header(
                        HttpHeaders.WWW_AUTHENTICATE,
                        stranger.isWrongToken()
                                ? "Bearer realm=\"campcloth\", error=\"invalid_token\""
                                : "Bearer realm=\"campcloth\"")
                .body(Problems.problem(
                        HttpStatus.UNAUTHORIZED, "not-logged-in", "Who asks?", String.valueOf(stranger.getMessage())));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> tooOften(TooOften often) {
        return ResponseEntity.status(HttpStatus.TOO_MANY_REQUESTS)
                .header(HttpHeaders.RETRY_AFTER, String.valueOf(often.waitSeconds()))
                .body(Problems.problem(
                        HttpStatus.TOO_MANY_REQUESTS, "too-often", "Too often", String.valueOf(often.getMessage())));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> busy(Busy busy) {
        return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE)
                .header(HttpHeaders.RETRY_AFTER, RETRY_SECONDS)
                .body(Problems.problem(
                        HttpStatus.SERVICE_UNAVAILABLE,
                        "busy",
                        "Too many " + busy.what() + " at once",
                        String.valueOf(busy.getMessage())));
    }

    /** A parameter whose escapes are none; the web server says which, but not to the log. */
    @ExceptionHandler
    ResponseEntity<ProblemDetail> unreadable(InvalidParameterException parameter) {
        HttpStatus status = HttpStatus.valueOf(parameter.getErrorCode());
        return ResponseEntity.status(status)
                .body(Problems.problem(
                        status,
                        "unreadable-parameter",
                        "A parameter cannot be read",
                        "Write a percent sign in an address or a form as %25, then send it again."));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> tooManyJobs(TooManyJobs many) {
        HttpStatus status = many.isOwn() ? HttpStatus.TOO_MANY_REQUESTS : HttpStatus.SERVICE_UNAVAILABLE;
        return ResponseEntity.status(status)
                .header(HttpHeaders.RETRY_AFTER, RETRY_SECONDS)
                .body(Problems.problem(status, "too-many-jobs", "Too many jobs", String.valueOf(many.getMessage())));
    }

    /** This instance was taken for dead while it worked on a call with a key; whoever took the call over will have the answer. */
    @ExceptionHandler
    ResponseEntity<ProblemDetail> takenOver(TakenOver elsewhere) {
        return ResponseEntity.status(HttpStatus.CONFLICT)
                .header(HttpHeaders.RETRY_AFTER, RETRY_SECONDS)
                .body(Problems.keyBusy());
    }

    @ExceptionHandler
    ProblemDetail jobEnded(JobEnded ended) {
        return Problems.problem(
                HttpStatus.CONFLICT, "job-ended", "The job has ended", String.valueOf(ended.getMessage()));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> unforeseen(Exception unforeseen) {
        Optional<Outage> outage = outages.of(unforeseen);
        if (outage.isPresent()) {
            LOG.warn("{}: {}", outage.get(), unforeseen.getMessage());
            ProblemDetail problem = Problems.outage(outage.get());
            return ResponseEntity.status(problem.getStatus())
                    .header(HttpHeaders.RETRY_AFTER, RETRY_SECONDS)
                    .body(problem);
        }
        LOG.error("Unforeseen failure", unforeseen);
        return ResponseEntity.internalServerError()
                .body(Problems.problem(
                        HttpStatus.INTERNAL_SERVER_ERROR,
                        "unforeseen",
                        "Something went wrong here",
                        "This is our fault, not yours. The log of the service says more."));
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleMethodArgumentNotValid(
            MethodArgumentNotValidException invalid, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        List<FieldError> errors = invalid.getBindingResult().getFieldErrors().stream()
                .map(e -> new FieldError(
                        e.getField(),
                        e.isBindingFailure()
                                ? misfit(e.unwrap(TypeMismatchException.class))
                                : String.valueOf(e.getDefaultMessage())))
                .toList();
        return badRequest(invalid, "invalid", "A field is missing or not of its form", errors, headers, request);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHttpMessageNotReadable(
            HttpMessageNotReadableException unreadable,
            HttpHeaders headers,
            HttpStatusCode status,
            WebRequest request) {
        FieldError error = Unreadable.error(unreadable);
        return badRequest(unreadable, "unreadable", "The body cannot be read", List.of(error), headers, request);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleTypeMismatch(
            TypeMismatchException mismatch, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        String field = mismatch instanceof MethodArgumentTypeMismatchException argument
                ? argument.getName()
                : String.valueOf(mismatch.getPropertyName());
        FieldError error = new FieldError(field, misfit(mismatch));
        return badRequest(mismatch, "invalid", "A parameter is not of its form", List.of(error), headers, request);
    }

    private static String misfit(TypeMismatchException mismatch) {
        return Words.quoted(String.valueOf(mismatch.getValue())) + " is not " + wanted(mismatch);
    }

    /** What a parameter should have been; the type behind an Optional. */
    private static String wanted(TypeMismatchException mismatch) {
        Class<?> type = mismatch instanceof MethodArgumentTypeMismatchException argument
                ? argument.getParameter().nestedIfOptional().getNestedParameterType()
                : mismatch.getRequiredType();
        return Unreadable.wanted(type);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleMissingServletRequestParameter(
            MissingServletRequestParameterException missing,
            HttpHeaders headers,
            HttpStatusCode status,
            WebRequest request) {
        FieldError error = new FieldError(missing.getParameterName(), "is missing; give it");
        return badRequest(missing, "invalid", "A parameter is missing", List.of(error), headers, request);
    }

    /** What the framework refuses by itself gets a type, like everything else. */
    @Override
    protected ResponseEntity<Object> createResponseEntity(
            @Nullable Object body, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        HttpStatus known = HttpStatus.resolve(status.value());
        if (known != null && body instanceof ProblemDetail problem && isUntyped(problem)) {
            String detail = known == HttpStatus.NOT_FOUND
                    ? "There is nothing at this address."
                    : String.valueOf(problem.getDetail());
            return new ResponseEntity<>(Problems.ofStatus(known, detail), headers, status);
        }
        return super.createResponseEntity(body, headers, status, request);
    }

    private static boolean isUntyped(ProblemDetail problem) {
        URI type = problem.getType();
        return type == null || type.toString().equals("about:blank");
    }

    private @Nullable ResponseEntity<Object> badRequest(
            Exception cause,
            String type,
            String title,
            List<FieldError> errors,
            HttpHeaders headers,
            WebRequest request) {
        ProblemDetail problem = Problems.fields(HttpStatus.BAD_REQUEST, type, title, errors);
        return handleExceptionInternal(cause, problem, headers, HttpStatus.BAD_REQUEST, request);
    }
}
