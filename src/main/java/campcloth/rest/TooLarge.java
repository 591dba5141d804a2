package campcloth.rest;

import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;

/** A list that goes on beyond what is read of one, whatever length it claimed. */
final class TooLarge extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private TooLarge() {
        super("the list is too large");
    }

    static TooLarge list() {
        return new TooLarge();
    }

    /** What is answered then. */
    static ProblemDetail problem(boolean list) {
        FieldError error = new FieldError("(body)", "is over " + (list ? 16 : 1) + " MiB; send less at once");
        return Problems.fields(HttpStatus.CONTENT_TOO_LARGE, "too-large", "The body is too large", List.of(error));
    }
}
