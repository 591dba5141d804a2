package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;

/** What people send does not come into the log, whichever way a request goes wrong; and each request has a name there. */
@WholeService
@ExtendWith(OutputCaptureExtension.class)
class QuietLogTest {

    private static final String MARK = "Quillfeather";
    private static final String ID = "0123456789abcdef-0123456789abcdef";

    @LocalServerPort
    private int port;

    @Autowired
    private JdbcTemplate sql;

    @Test
    void requestsThatAreAnsweredAndThatAreRefusedLeaveNothing(CapturedOutput log) throws IOException {
        for (String method : List.of("GET", "DELETE", "PUT", "TRACE", "BREW")) {
            for (String path : List.of("/api/cloths/", "/api/events/", "/plan/sheets/", "/", "/sheets/")) {
                send(method + " " + path + MARK + "?key=" + MARK + " HTTP/1.1", "");
            }
        }
        for (String path : List.of("/api/labels", "/api/advice", "/api/events", "/api/cloths", "/events", "/plan")) {
            post(
                    path + "?key=" + MARK,
                    "application/json",
                    "{\"text\": \"60% " + MARK + "\", \"name\": \"" + MARK + "\"}");
            post(path + "?key=" + MARK, "application/json", "{\"text\": \"" + MARK);
            post(path, "text/" + MARK, MARK);
            post(path, "application/x-www-form-urlencoded", "name=" + MARK + "&%zz" + MARK);
        }
        post("/api/events", "application/json", Bodies.EVENT.replace("Wendlow river camp", MARK));
        send("GET /shop?label=60%25+" + MARK + "&key=" + MARK + " HTTP/1.1", "");
        assertThat(log.getAll()).doesNotContainIgnoringCase(MARK);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET /api/cloths?key=" + MARK + "|{x} HTTP/1.1",
                "GET /api/cloths?key=" + MARK + "%zz HTTP/1.1",
                "GET /%00" + MARK + " HTTP/1.1",
                MARK + "(): /api HTTP/1.1",
                "GET /api/cloths?key=" + MARK + " HTTP/" + MARK
            })
    void norDoWhatTheWebServerItselfCannotRead(String line, CapturedOutput log) throws IOException {
        send(line, "Authorization: Bearer " + MARK + "\r\nCookie: a=\"" + MARK + "; $x=@\u0001" + MARK + "\r\n");
        send("GET / HTTP/1.1", "Cookie: =\"" + MARK + ";;,\\\r\nAuthorization: Basic " + MARK + "\r\n");
        send("GET / HTTP/1.1", MARK + " no colon\r\n");
        assertThat(log.getAll()).doesNotContainIgnoringCase(MARK);
    }

    @Test
    void norDoRowsThatTheDatabaseRefuses() {
        sql.execute("create table quiet_log (word text primary key)");
        try {
            String insert = "insert into quiet_log values (?)";
            sql.update(insert, MARK);
            assertThatThrownBy(() -> sql.update(insert, MARK))
                    .isInstanceOf(DataIntegrityViolationException.class)
                    .hasMessageContaining("duplicate key")
                    .hasMessageNotContaining(MARK);
            assertThatThrownBy(() -> sql.batchUpdate(insert, List.of(new Object[] {MARK}, new Object[] {MARK})))
                    .isInstanceOf(DataIntegrityViolationException.class)
                    .hasMessageNotContaining(MARK);
        } finally {
            sql.execute("drop table quiet_log");
        }
    }

    @Test
    void aNumberOfTheProxyIsTakenOverAndAnythingElseIsNot() throws IOException {
        assertThat(send("GET / HTTP/1.1", "X-Request-Id: " + ID + "\r\n")).contains("X-Request-Id: " + ID + "\r\n");
        for (String other : List.of(MARK, "x".repeat(20), "0123", "0".repeat(65), ID + " " + ID, ID + "\t[INFO]")) {
            assertThat(send("GET /api/nowhere HTTP/1.1", "X-Request-Id: " + other + "\r\n"))
                    .doesNotContain(other + "\r\n")
                    .containsPattern("X-Request-Id: [0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\r\n");
        }
    }

    private String post(String path, String type, String body) throws IOException {
        return send(
                "POST " + path + " HTTP/1.1",
                "Authorization: Bearer " + MARK + "\r\n" + RawRequests.contentOf(type, body),
                body);
    }

    private String send(String line, String headers) throws IOException {
        return send(line, headers, "");
    }

    private String send(String line, String headers, String body) throws IOException {
        return new RawRequests(port).send(line, "Host: localhost\r\n" + headers, body);
    }
}
