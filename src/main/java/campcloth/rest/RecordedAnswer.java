package campcloth.rest;

import campcloth.access.CallAnswer;
import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.WriteListener;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An answer that is written down while it goes out, as long as it is not too long to be kept. */
final class RecordedAnswer extends HttpServletResponseWrapper {

    /** Longest answer that is kept, bytes. */
    static final int MOST_BYTES = 512 * 1024;

    private static final List<String> HEADERS = List.of("Content-Type", "Location", "ETag", "Retry-After");

    private final ByteArrayOutputStream copy = new ByteArrayOutputStream();
    private Optional<ServletOutputStream> out = Optional.empty();
    private boolean isWhole = true;

    RecordedAnswer(HttpServletResponse response) {
        super(response);
    }

    /** The answer; nothing where it was too long. */
    Optional<CallAnswer> answer() {
        if (!isWhole) {
            return Optional.empty();
        }
        Map<String, String> headers = new HashMap<>();
        HEADERS.forEach(name -> Optional.ofNullable(getHeader(name)).ifPresent(value -> headers.put(name, value)));
        return Optional.of(new CallAnswer(getStatus(), headers, copy.toString(StandardCharsets.UTF_8)));
    }

    @Override
    public PrintWriter getWriter() throws IOException {
        isWhole = false;
        return super.getWriter();
    }

    @Override
    public ServletOutputStream getOutputStream() throws IOException {
        if (out.isEmpty()) {
            out = Optional.of(new Copying(super.getOutputStream()));
        }
        return out.get();
    }

    private void copy(byte[] bytes, int offset, int length) {
        isWhole &= copy.size() + length <= MOST_BYTES;
        if (isWhole) {
            copy.write(bytes, offset, length);
        } else {
            copy.reset();
        }
    }

    /** Writes to both. */
    private final class Copying extends ServletOutputStream {

        private final ServletOutputStream there;

        Copying(ServletOutputStream there) {
            this.there = there;
        }

        @Override
        public void write(int b) throws IOException {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            copy(bytes, offset, length);
            there.write(bytes, offset, length);
        }

        @Override
        public void flush() throws IOException {
            there.flush();
        }

        @Override
        public boolean isReady() {
            return there.isReady();
        }

        @Override
        public void setWriteListener(WriteListener listener) {
            there.setWriteListener(listener);
        }
    }
}
