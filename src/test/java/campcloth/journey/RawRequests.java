package campcloth.journey;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** Requests sent byte by byte, as no HTTP client would write them; each asks for its connection to be closed. */
final class RawRequests {

    private static final int PATIENCE_MILLIS = 120_000;

    private final int port;

    RawRequests(int port) {
        this.port = port;
    }

    /**
     * Sends one and reads all that comes back.
     *
     * @param line the request line
     * @param headers further ones, each with its end of line
     */
    String send(String line, String headers, String body) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(PATIENCE_MILLIS);
            OutputStream out = socket.getOutputStream();
            out.write((line + "\r\nConnection: close\r\n" + headers + "\r\n" + body).getBytes(StandardCharsets.UTF_8));
            out.flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static String contentOf(String type, String body) {
        return "Content-Type: " + type + "\r\nContent-Length: " + body.getBytes(StandardCharsets.UTF_8).length + "\r\n";
    }
}
