package campcloth.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What every picture keeps to, whatever it shows; and a picture read back. */
public final class PictureRules {

    /** Text that tries to be more than text. */
    public static final List<String> HOSTILE = List.of(
            "<script>alert(1)</script>",
            "]]><!-- -->&lt;&#60;",
            "\u202eabc\u2066def\u200f",
            "w".repeat(10_000),
            "\ud83d\udd25\ud83e\uddf5 \ud800 x",
            "\" onload=\"alert(1)\" x='",
            "a\u0000b\u0007c\u0085\ufffe\nd",
            "url(#rising) <style>* {}</style>",
            "\u0130\u0307\u0301\u0301\u0301 \u05d0\u0627\u4e2d");

    private static final Set<String> ELEMENTS =
            Set.of("svg", "title", "desc", "defs", "pattern", "g", "path", "rect", "circle", "text", "tspan");

    private static final Set<String> ATTRIBUTES = Set.of(
            "xmlns",
            "role",
            "aria-labelledby",
            "viewBox",
            "width",
            "height",
            "id",
            "font-family",
            "font-size",
            "font-weight",
            "fill",
            "stroke",
            "stroke-width",
            "stroke-dasharray",
            "stroke-linecap",
            "stroke-linejoin",
            "text-anchor",
            "patternUnits",
            "transform",
            "paint-order",
            "d",
            "x",
            "y",
            "dy",
            "cx",
            "cy",
            "r");

    private static final Map<String, Pattern> VALUES = Map.of(
            "fill", Pattern.compile("none|#[0-9a-f]{3}|#[0-9a-f]{6}|url\\(#[a-z-]+\\)"),
            "stroke", Pattern.compile("none|#[0-9a-f]{3}|#[0-9a-f]{6}"),
            "d", Pattern.compile("[MLHVCAZmlhvcaz0-9 .-]*"),
            "transform", Pattern.compile("translate\\([0-9. -]+\\)rotate\\(-90\\)"));

    private static final Set<String> NUMBERS =
            Set.of("x", "y", "dy", "cx", "cy", "r", "width", "height", "font-size", "stroke-width");

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    private final Document document;
    private final double[] frame;
    private final String which;

    private PictureRules(Document document, String which) {
        this.document = document;
        this.which = which;
        this.frame = numbers(document.getDocumentElement().getAttribute("viewBox"));
    }

    /** Reads the picture and asserts what holds for all. */
    public static PictureRules read(String svg, String which) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        Document document =
                factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        PictureRules picture = new PictureRules(document, which);
        picture.assertOnlyKnownParts();
        picture.assertTitled();
        assertThat(svg.chars().noneMatch(PictureRules::steers)).as(which).isTrue();
        return picture;
    }

    private static boolean steers(int character) {
        boolean control = character < ' ' && character != '\n' || character >= 0x7f && character < 0xa0;
        return control
                || character == 0x200e
                || character == 0x200f
                || character >= 0x202a && character <= 0x202e
                || character >= 0x2066 && character <= 0x2069;
    }

    private void assertOnlyKnownParts() {
        for (Element element : all("*")) {
            assertThat(ELEMENTS).as(which).contains(element.getTagName());
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                Attr attribute = (Attr) element.getAttributes().item(i);
                String name = attribute.getName();
                assertThat(ATTRIBUTES).as(which).contains(name);
                String usual = NUMBERS.contains(name) ? "-?[0-9]+(\\.[0-9]+)?(mm)?" : ".*";
                Pattern form = VALUES.getOrDefault(name, Pattern.compile(usual));
                assertThat(attribute.getValue()).as(which + " " + name).matches(form);
            }
        }
    }

    private void assertTitled() {
        Element root = document.getDocumentElement();
        assertThat(root.getAttribute("role")).as(which).isEqualTo("img");
        assertThat(all("title").get(0).getTextContent()).as(which + " title").isNotBlank();
        assertThat(all("desc").get(0).getTextContent())
                .as(which + " description")
                .isNotBlank();
        Element paper = all("rect").stream()
                .filter(r -> r.getParentNode() == root)
                .findFirst()
                .orElseThrow();
        assertThat(paper.getAttribute("fill")).as(which).isEqualTo("#fff");
    }

    /** On a phone, 328 px wide, no letter is smaller than 11.5 px. */
    public PictureRules readableOnAPhone() {
        double px = 328 / frame[2];
        for (Element text : all("text")) {
            assertThat(px * size(text)).as(which + ": " + text.getTextContent()).isGreaterThanOrEqualTo(11.5);
        }
        return this;
    }

    /** No word leaves the picture, by the broad estimate of {@link TextWidth}; no word stands on another. */
    public PictureRules wordsKeepTheirPlaces() {
        List<double[]> taken = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (Element text : all("text")) {
            double[] box = box(text);
            String said = which + ": " + text.getTextContent();
            assertThat(box[0]).as(said).isGreaterThanOrEqualTo(frame[0]);
            assertThat(box[1]).as(said).isGreaterThanOrEqualTo(frame[1]);
            assertThat(box[2]).as(said).isLessThanOrEqualTo(frame[0] + frame[2]);
            assertThat(box[3]).as(said).isLessThanOrEqualTo(frame[1] + frame[3]);
            for (int i = 0; i < taken.size(); i++) {
                double[] other = taken.get(i);
                boolean meets = box[0] < other[2] && other[0] < box[2] && box[1] < other[3] && other[1] < box[3];
                assertThat(meets).as(said + " on " + words.get(i)).isFalse();
            }
            taken.add(box);
            words.add(text.getTextContent());
        }
        return this;
    }

    private static double size(Element text) {
        return Double.parseDouble(text.getAttribute("font-size"));
    }

    private static double[] box(Element text) {
        double size = size(text);
        double width = TextWidth.of(text.getTextContent(), size);
        double x = Double.parseDouble(text.getAttribute("x"));
        double y = Double.parseDouble(text.getAttribute("y"));
        double before = switch (text.getAttribute("text-anchor")) {
            case "middle" -> width / 2;
            case "end" -> width;
            default -> 0;
        };
        return new double[] {x - before, y - 0.72 * size, x - before + width, y + 0.2 * size};
    }

    public List<Element> all(String tag) {
        NodeList nodes = document.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    public List<String> words() {
        return all("text").stream().map(Element::getTextContent).toList();
    }

    public String description() {
        return all("desc").get(0).getTextContent();
    }

    public boolean holds(double x, double y) {
        return x >= frame[0] && x <= frame[0] + frame[2] && y >= frame[1] && y <= frame[1] + frame[3];
    }

    public static double[] numbers(String words) {
        Matcher matcher = NUMBER.matcher(words);
        List<Double> numbers = new ArrayList<>();
        while (matcher.find()) {
            numbers.add(Double.parseDouble(matcher.group()));
        }
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
