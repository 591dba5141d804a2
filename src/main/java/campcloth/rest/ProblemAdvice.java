package campcloth.rest;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.layout.Busy;
import java.net.URI;
import java.util.List;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.TypeMismatchException;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.transaction.CannotCreateTransactionException;
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

    @ExceptionHandler({DataAccessResourceFailureException.class, CannotCreateTransactionException.class})
    ResponseEntity<ProblemDetail> databaseAway(Exception away) {
        LOG.warn("The database does not answer: {}", away.getMessage());
        return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE)
                .header(HttpHeaders.RETRY_AFTER, RETRY_SECONDS)
                .body(Problems.problem(
                        HttpStatus.SERVICE_UNAVAILABLE,
                        "database-away",
                        "The database does not answer",
                        "Nothing was lost. Try again in a few seconds."));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> busy(Busy busy) {
        return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE)
                .header(HttpHeaders.RETRY_AFTER, RETRY_SECONDS)
                .body(Problems.problem(
                        HttpStatus.SERVICE_UNAVAILABLE,
                        "busy",
                        "Too many layouts at once",
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
    ProblemDetail unforeseen(Exception unforeseen) {
        LOG.error("Unforeseen failure", unforeseen);
        return Problems.problem(
                HttpStatus.INTERNAL_SERVER_ERROR,
                "unforeseen",
                "Something went wrong here",
                "This is our fault, not yours. The log of the service says more.");
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleMethodArgumentNotValid(
            MethodArgumentNotValidException invalid, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        List<FieldError> errors = invalid.getBindingResult().getFieldErrors().stream()
                .map(e -> new FieldError(e.getField(), String.valueOf(e.getDefaultMessage())))
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
        FieldError error = new FieldError(
                field, Words.quoted(String.valueOf(mismatch.getValue())) + " is not " + wanted(mismatch));
        return badRequest(mismatch, "invalid", "A parameter is not of its form", List.of(error), headers, request);
    }

    /** What a parameter should have been; the type behind an Optional. */
    private static String wanted(TypeMismatchException mismatch) {
        if (mismatch instanceof MethodArgumentTypeMismatchException argument) {
            Class<?> type = argument.getParameter().nestedIfOptional().getNestedParameterType();
            return Unreadable.wanted(type);
        }
        return "a value of the right form";
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
