package campcloth.rest;

import campcloth.supply.ListDesk;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Locale;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses bodies over 1 MiB before anything reads them, whatever length they claim. A supplier's list may be 16 MiB; it is not held
 * in memory but counted while it is read.
 */
@Component
@Order(Ordered.LOWEST_PRECEDENCE - 1)
class BodyLimit extends OncePerRequestFilter {

    static final int MOST_BYTES = 1024 * 1024;

    static final String LISTS = "/api/cloths/import";

    static final String LISTS_AS_JOBS = "/api/jobs/lists";

    /** Where a form sends lists to; the web server holds it to the size of a list, and a page says so. */
    private static final String LISTS_OF_FORMS = "/cloths/import";

    private final ProblemWriter problems;

    BodyLimit(ProblemWriter problems) {
        this.problems = problems;
    }

    /** What another filter refused is told by a page of ours; its body is nobody's any more. */
    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return request.getDispatcherType() == DispatcherType.FORWARD;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean posted = request.getMethod().equals("POST");
        if (posted && request.getRequestURI().equals(LISTS_OF_FORMS)) {
            chain.doFilter(request, response);
            return;
        }
        boolean list = posted && isList(request);
        if (request.getContentLengthLong() > (list ? ListDesk.MOST_BYTES : MOST_BYTES)) {
            refuse(response, list);
            return;
        }
        if (list || isForm(request)) {
            chain.doFilter(request, response);
            return;
        }
        byte[] body = request.getInputStream().readNBytes(MOST_BYTES + 1);
        if (body.length > MOST_BYTES) {
            refuse(response, false);
            return;
        }
        chain.doFilter(new Buffered(request, body), response);
    }

    /** Whether it is sent to where lists are taken, which count what they read. */
    static boolean isList(HttpServletRequest request) {
        return request.getRequestURI().equals(LISTS) || request.getRequestURI().equals(LISTS_AS_JOBS);
    }

    /** Forms are read by the web server itself, which holds them to limits of its own. */
    private static boolean isForm(HttpServletRequest request) {
        String type = String.valueOf(request.getContentType()).toLowerCase(Locale.ROOT);
        return type.startsWith(MediaType.APPLICATION_FORM_URLENCODED_VALUE)
                || type.startsWith(MediaType.MULTIPART_FORM_DATA_VALUE);
    }

    private void refuse(HttpServletResponse response, boolean list) throws IOException {
        problems.write(response, TooLarge.problem(list));
    }

    /** The request with its body already read. */
    private static final class Buffered extends HttpServletRequestWrapper {

        private final byte[] body;

        Buffered(HttpServletRequest request, byte[] body) {
            super(request);
            this.body = body;
        }

        @Override
        public ServletInputStream getInputStream() {
            ByteArrayInputStream bytes = new ByteArrayInputStream(body);
            return new ServletInputStream() {
                @Override
                public int read() {
                    return bytes.read();
                }

                @Override
                public int read(byte[] target, int offset, int length) {
                    return bytes.read(target, offset, length);
                }

                @Override
                public boolean isFinished() {
                    return bytes.available() == 0;
                }

                @Override
                public boolean isReady() {
                    return true;
                }

                @Override
                public void setReadListener(ReadListener listener) {
                    throw new IllegalStateException("the body is read at once");
                }
            };
        }
    }
}
