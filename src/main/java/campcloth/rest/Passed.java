package campcloth.rest;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import java.io.IOException;
import java.util.Optional;

/** A request that was passed on to the rest of a chain, and how that failed if it did. */
record Passed(Optional<IOException> broken, Optional<ServletException> failed) {

    static Passed on(FilterChain chain, ServletRequest request, ServletResponse response) {
        try {
            chain.doFilter(request, response);
            return new Passed(Optional.empty(), Optional.empty());
        } catch (IOException broken) {
            return new Passed(Optional.of(broken), Optional.empty());
        } catch (ServletException failed) {
            return new Passed(Optional.empty(), Optional.of(failed));
        }
    }

    void orThrow() throws IOException, ServletException {
        if (broken.isPresent()) {
            throw broken.get();
        }
        if (failed.isPresent()) {
            throw failed.get();
        }
    }
}
