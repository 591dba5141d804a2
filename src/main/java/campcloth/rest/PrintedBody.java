package campcloth.rest;

import campcloth.supply.ListDesk;
import campcloth.supply.Spool;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Objects;

/** The body of a request, read once to its end for its fingerprint, and on disk to be read again. */
final class PrintedBody implements AutoCloseable {

    private final HttpServletRequest request;
    private final Spool bytes;
    private final boolean isTooLarge;
    private final String fingerprint;

    private PrintedBody(HttpServletRequest request, Spool bytes, boolean isTooLarge, String fingerprint) {
        this.request = request;
        this.bytes = bytes;
        this.isTooLarge = isTooLarge;
        this.fingerprint = fingerprint;
    }

    static PrintedBody of(HttpServletRequest request) throws IOException {
        MessageDigest digest = sha256();
        String query = Objects.requireNonNullElse(request.getQueryString(), "");
        digest.update((query + "\n").getBytes(StandardCharsets.UTF_8));
        Spool bytes = new Spool();
        try {
            long most = BodyLimit.isList(request) ? ListDesk.MOST_BYTES : BodyLimit.MOST_BYTES;
            boolean whole = bytes.take(new DigestInputStream(request.getInputStream(), digest), most);
            return new PrintedBody(request, bytes, !whole, HexFormat.of().formatHex(digest.digest()));
        } catch (IOException | RuntimeException broken) {
            bytes.close();
            throw broken;
        }
    }

    boolean isTooLarge() {
        return isTooLarge;
    }

    /** SHA-256 over query and body. */
    String fingerprint() {
        return fingerprint;
    }

    /** The request with its body still to be read. */
    HttpServletRequest again() {
        return new Unread(request, bytes.in());
    }

    @Override
    public void close() throws IOException {
        bytes.close();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }

    /** A request whose body comes from elsewhere. */
    private static final class Unread extends HttpServletRequestWrapper {

        private final ServletInputStream body;

        Unread(HttpServletRequest request, InputStream bytes) {
            super(request);
            this.body = new From(bytes);
        }

        @Override
        public ServletInputStream getInputStream() {
            return body;
        }
    }

    private static final class From extends ServletInputStream {

        private final InputStream bytes;
        private boolean ended;

        From(InputStream bytes) {
            this.bytes = bytes;
        }

        @Override
        public int read() throws IOException {
            int one = bytes.read();
            ended |= one < 0;
            return one;
        }

        @Override
        public int read(byte[] target, int offset, int length) throws IOException {
            int some = bytes.read(target, offset, length);
            ended |= some < 0;
            return some;
        }

        @Override
        public boolean isFinished() {
            return ended;
        }

        @Override
        public boolean isReady() {
            return true;
        }

        @Override
        public void setReadListener(ReadListener listener) {
            throw new IllegalStateException("the body is read at once");
        }
    }
}
