package campcloth.rest;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.layout.Effort;
import campcloth.layout.Layout;
import campcloth.layout.Nesting;
import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Strip;
import campcloth.layout.Verification;
import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.WriteListener;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import tools.jackson.databind.json.JsonMapper;

/** A client that went away ends the search. */
class LayoutEventsEndTest {

    private static final class Gone extends MockHttpServletResponse {

        @Override
        public ServletOutputStream getOutputStream() {
            return new ServletOutputStream() {
                @Override
                public boolean isReady() {
                    return true;
                }

                @Override
                public void setWriteListener(WriteListener listener) {
                    throw new IllegalStateException("the searching thread writes, nothing is written later");
                }

                @Override
                public void write(int some) throws IOException {
                    throw new IOException("gone");
                }
            };
        }
    }

    @Test
    void theSearchEndsWithASoundLayoutAsSoonAsNobodyReads() {
        LayoutEvents events = new LayoutEvents(new Gone(), new JsonMapper());
        assertThat(events.isStopped()).isFalse();
        List<Piece> pieces = List.of(new Piece(
                "gore",
                Outline.of(List.of(
                        new campcloth.layout.Point(0, 0),
                        new campcloth.layout.Point(30, 0),
                        new campcloth.layout.Point(11, 60))),
                9,
                true,
                false,
                false));
        Layout layout = Nesting.layout(Strip.ofWidth(140), pieces, new Effort(30, 1), events);
        assertThat(events.isStopped()).isTrue();
        assertThat(Verification.faults(layout)).isEmpty();
        assertThat(layout.placements()).hasSize(9);
    }
}
