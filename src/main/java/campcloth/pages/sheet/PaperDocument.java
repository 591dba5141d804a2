package campcloth.pages.sheet;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page of XHTML made fit to be set: read without a document type, hence without entities; letters without a sign replaced. */
final class PaperDocument {

    private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";
    /** Where the page says that some letters have no sign. */
    private static final String NOTE = "letters";

    private final Document document;
    private final PaperFont font;
    private boolean lacks;

    private PaperDocument(Document document, PaperFont font) {
        this.document = document;
        this.font = font;
    }

    static Document of(String xhtml, PaperFont font) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature(NO_DOCTYPE, true);
            Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(allowed(xhtml))));
            return new PaperDocument(document, font).made();
        } catch (ParserConfigurationException | SAXException broken) {
            throw new IOException("the sheet is not well-formed", broken);
        }
    }

    /** Without characters that XML 1.0 does not allow. */
    private static String allowed(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints()
                .filter(c -> c == '\t'
                        || c == '\n'
                        || c == '\r'
                        || c >= ' ' && (c < 0xD800 || c > 0xDFFF) && (c & 0xFFFE) != 0xFFFE)
                .forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private Document made() {
        walk(document.getDocumentElement());
        NodeList blocks = document.getElementsByTagName("div");
        for (int i = blocks.getLength() - 1; i >= 0; i--) {
            Element block = (Element) blocks.item(i);
            if (block.getAttribute("id").equals(NOTE) && !lacks) {
                block.getParentNode().removeChild(block);
            }
        }
        return document;
    }

    private void walk(Node node) {
        if (node.getNodeType() == Node.TEXT_NODE) {
            node.setNodeValue(shown(node.getNodeValue()));
        }
        if (node instanceof Element element && element.getLocalName().equals("svg")) {
            element.setAttribute("font-family", PaperFont.FAMILY);
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            walk(child);
        }
    }

    private String shown(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> {
            if (font.has(letter)) {
                shown.appendCodePoint(letter);
            } else if (Character.getType(letter) != Character.FORMAT) {
                lacks = true;
                shown.append(PaperFont.NO_SIGN);
            }
        });
        return shown.toString();
    }
}
