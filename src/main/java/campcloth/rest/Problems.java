package campcloth.rest;

import campcloth.figure.Refused;
import campcloth.fire.Boundary;
import campcloth.outage.Outage;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;

/** RFC 9457 problems in the shape that this service uses everywhere. */
final class Problems {

    private static final String TYPES = "urn:campcloth:problem:";

    private Problems() {}

    static ProblemDetail problem(HttpStatus status, String type, String title, String detail) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, detail);
        problem.setType(URI.create(TYPES + type));
        problem.setTitle(title);
        return problem;
    }

    /** A problem that the status alone tells. */
    static ProblemDetail ofStatus(HttpStatus status, String detail) {
        return problem(
                status,
                status.getReasonPhrase().toLowerCase(Locale.ROOT).replace(' ', '-'),
                status.getReasonPhrase(),
                detail);
    }

    static ProblemDetail fields(HttpStatus status, String type, String title, List<FieldError> errors) {
        String detail = errors.isEmpty()
                ? title
                : errors.get(0).field() + ": " + errors.get(0).message();
        ProblemDetail problem = problem(status, type, title, detail);
        problem.setProperty("errors", errors);
        return problem;
    }

    static ProblemDetail refused(Refused refused) {
        return fields(
                HttpStatus.UNPROCESSABLE_CONTENT,
                "refused",
                "A value cannot be used",
                refused.refusals().stream().map(FieldError::of).toList());
    }

    /** A call with the same key is in somebody's hands. */
    static ProblemDetail keyBusy() {
        return problem(
                HttpStatus.CONFLICT,
                "key-busy",
                "The first call is still being worked on",
                "The call that came first with this Idempotency-Key is still being worked on. Send it again in a few seconds.");
    }

    /** What lies under the service fails it: nothing is wrong with the request. */
    static ProblemDetail outage(Outage outage) {
        return switch (outage) {
            case DATABASE_AWAY ->
                problem(
                        HttpStatus.SERVICE_UNAVAILABLE,
                        "database-away",
                        "The database does not answer",
                        "Nothing that was acknowledged is lost. Try again in a few seconds; look first whether a change that"
                                + " was under way was written after all.");
            case CONTENDED ->
                problem(
                        HttpStatus.SERVICE_UNAVAILABLE,
                        "contended",
                        "Others are at work on the same",
                        "It took too long to get a turn, so it was given up and nothing was written. Try again in a few"
                                + " seconds.");
            case STORAGE_FULL ->
                problem(
                        HttpStatus.INSUFFICIENT_STORAGE,
                        "storage-full",
                        "There is no room left to write",
                        "Nothing was written, nothing is lost, and reading goes on. Whoever runs the service frees room on the"
                                + " disk of the database; then send it again.");
            case READ_ONLY ->
                problem(
                        HttpStatus.SERVICE_UNAVAILABLE,
                        "read-only",
                        "The database takes no changes now",
                        "Nothing was written, and reading goes on. Whoever runs the service looks why its database only"
                                + " reads; then send it again.");
        };
    }

    /** No grade, but whom to ask. */
    static ProblemDetail outside(String field, Boundary boundary) {
        ProblemDetail problem =
                problem(HttpStatus.UNPROCESSABLE_CONTENT, "outside", "Outside what we advise on", boundary.because());
        problem.setProperty("errors", List.of(new FieldError(field, "names " + boundary + "; ask those named in ask")));
        problem.setProperty("boundary", boundary);
        problem.setProperty("ask", boundary.ask());
        problem.setProperty("cautions", boundary.cautions());
        return problem;
    }
}
