package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class LayoutDrawingTest {

    private static final String HOSTILE = "</text><script>alert(\"1\")</script>&'\u0000\u0007\u202E\uD800]]>";

    private static String drawn(String name, String title) {
        List<Piece> pieces = List.of(
                new Piece(name, RandomPieces.trapezoid(60, 30, 80), 3, true, false, false),
                new Piece("band", Outline.rectangle(30, 5), 1, true, false, false));
        return LayoutDrawing.svg(Nesting.layout(Strip.ofWidth(120), pieces, new Effort(0.05, 1)), title);
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    @Test
    void hostileNamesAreTextAndNothingElse() throws Exception {
        String svg = drawn(HOSTILE, HOSTILE);
        Document document = parsed(svg);
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        assertThat(svg.chars().noneMatch(c -> c < 32 && c != '\n' || c == 0x202E || Character.isSurrogate((char) c)))
                .isTrue();
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("</text><script>alert(\"1\")</script>&']]>");
    }

    @Test
    void everyPieceIsDrawnNamedAndPlacedInWords() throws Exception {
        Document document = parsed(drawn("gore", "Tunic of the Wendlow river camp"));
        String words = document.getElementsByTagName("desc").item(0).getTextContent();
        assertThat(words)
                .contains("gore 1", "gore 2", "gore 3", "band 1", "from the selvedge", "turned", "120.0 cm wide");
        assertThat(document.getElementsByTagName("g").getLength()).isEqualTo(4);
    }

    @Test
    void theCutEdgeLiesBelow() {
        Layout layout = Nesting.layout(
                Strip.ofWidth(100),
                List.of(new Piece("band", Outline.rectangle(100, 40), 1, true, false, false)),
                new Effort(0.05, 1));
        assertThat(LayoutDrawing.svg(layout, "Band"))
                .contains("<path d=\"M0.00 40.00L100.00 40.00L100.00 0.00L0.00 0.00Z\"");
    }
}
