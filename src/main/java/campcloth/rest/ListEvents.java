package campcloth.rest;

import campcloth.supply.ListReport;
import campcloth.supply.SupplierLists;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.springframework.http.MediaType;
import tools.jackson.databind.json.JsonMapper;

/**
 * A list told while it is taken over: {@code progress} with the rows read, written and indexed, then {@code row} for each row, at the end
 * {@code report}, or {@code problem} where it is refused after all. Only the report says that anything was written. As lines of
 * JSON, or as server-sent events. A client that goes away changes nothing.
 */
final class ListEvents implements SupplierLists.Watcher {

    static final MediaType LINES = MediaType.APPLICATION_NDJSON;

    private static final long BEAT_NANOS = 200_000_000;

    /** How far it has come: rows read, cloths added, cloths that searching finds by now. */
    record Progress(long read, long written, long indexed) {}

    private final HttpServletResponse response;
    private final JsonMapper json;
    private final boolean lines;
    private long lastTold;
    private long read;
    private long written;
    private boolean gone;

    ListEvents(HttpServletResponse response, JsonMapper json, boolean lines) {
        this.response = response;
        this.json = json;
        this.lines = lines;
    }

    @Override
    public void read(long rows) {
        read = rows;
        progress(0);
    }

    @Override
    public void written(long rows) {
        written = rows;
        progress(0);
    }

    @Override
    public void indexed(long cloths) {
        progress(cloths);
    }

    private void progress(long indexed) {
        if (lastTold == 0 || System.nanoTime() - lastTold > BEAT_NANOS) {
            lastTold = System.nanoTime();
            send("progress", new Progress(read, written, indexed));
            flush();
        }
    }

    @Override
    public boolean wantsRows() {
        return true;
    }

    @Override
    public void row(ListReport.Row row) {
        send("row", ListReportBody.RowBody.of(row));
    }

    /** Whether the answer has begun, so that it can no longer become a problem. */
    boolean hasBegun() {
        return response.isCommitted();
    }

    /** The last event. */
    void end(String event, Object data) {
        send(event, data);
        flush();
    }

    private void send(String event, Object data) {
        String text = lines
                ? json.writeValueAsString(Map.of(event, data)) + "\n"
                : "event: " + event + "\ndata: " + json.writeValueAsString(data) + "\n\n";
        if (gone) {
            return;
        }
        try {
            if (!hasBegun()) {
                response.setContentType((lines ? LINES : MediaType.TEXT_EVENT_STREAM).toString());
                response.setCharacterEncoding(StandardCharsets.UTF_8);
                response.setHeader("Cache-Control", "no-store");
            }
            OutputStream out = response.getOutputStream();
            out.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException away) {
            gone = true;
        }
    }

    private void flush() {
        try {
            if (!gone) {
                response.flushBuffer();
            }
        } catch (IOException away) {
            gone = true;
        }
    }
}
