package campcloth.rest;

import campcloth.layout.Progress;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.springframework.http.MediaType;
import tools.jackson.databind.json.JsonMapper;

/**
 * A search told as server-sent events while it runs: {@code better} for each better length, {@code layout} with the answer at
 * the end. The answer begins with the first event, so that whatever is refused before is refused as ever. Between events
 * comments are sent; where they no longer arrive, the search ends.
 */
final class LayoutEvents implements Progress {

    private static final long BEAT_NANOS = 500_000_000;

    /** A length found on the way. */
    @Schema(name = "BetterLayout")
    record Better(double lengthCm, double usedPercent, double seconds) {}

    private final HttpServletResponse response;
    private final JsonMapper json;
    private final long begun = System.nanoTime();
    private long lastSent = begun;
    private boolean gone;

    LayoutEvents(HttpServletResponse response, JsonMapper json) {
        this.response = response;
        this.json = json;
    }

    /** Whether the first event was sent, after which nothing can be refused any more. */
    boolean hasBegun() {
        return response.isCommitted();
    }

    @Override
    public void better(double lengthCm, double usedPercent) {
        send("better", new Better(lengthCm, usedPercent, (System.nanoTime() - begun) / 1e9));
    }

    @Override
    public boolean isStopped() {
        if (!gone && hasBegun() && System.nanoTime() - lastSent > BEAT_NANOS) {
            write(": searching\n\n");
        }
        return gone;
    }

    /** The last event. */
    void end(LayoutAnswer answer) {
        send("layout", answer);
    }

    private void send(String event, Object data) {
        write("event: " + event + "\ndata: " + json.writeValueAsString(data) + "\n\n");
    }

    private void write(String text) {
        lastSent = System.nanoTime();
        if (gone) {
            return;
        }
        try {
            if (!hasBegun()) {
                response.setContentType(MediaType.TEXT_EVENT_STREAM_VALUE);
                response.setCharacterEncoding(StandardCharsets.UTF_8);
                response.setHeader("Cache-Control", "no-store");
            }
            OutputStream out = response.getOutputStream();
            out.write(text.getBytes(StandardCharsets.UTF_8));
            out.flush();
        } catch (IOException away) {
            gone = true;
        }
    }
}
