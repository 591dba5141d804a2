package campcloth.door;

import campcloth.access.Asker;
import campcloth.access.Askers;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Function;
import org.springframework.web.filter.OncePerRequestFilter;

/** Says of each request who asks, with the keys of the links that it carries. */
class AskerFilter extends OncePerRequestFilter {

    private final Askers askers;
    private final Function<HttpServletRequest, Asker> who;

    /** @param who tells who sent a request, besides the keys */
    AskerFilter(Askers askers, Function<HttpServletRequest, Asker> who) {
        this.askers = askers;
        this.who = who;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Asker asker = who.apply(request).with(ShownKeys.in(request));
        try {
            askers.as(asker, () -> {
                try {
                    chain.doFilter(request, response);
                } catch (IOException failed) {
                    throw new UncheckedIOException(failed);
                } catch (ServletException failed) {
                    throw new Carried(failed);
                }
                return asker;
            });
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        } catch (Carried failed) {
            throw failed.failure;
        }
    }

    /** A failure on its way through work that may not throw it. */
    private static final class Carried extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final ServletException failure;

        Carried(ServletException failure) {
            super(failure);
            this.failure = failure;
        }
    }
}
