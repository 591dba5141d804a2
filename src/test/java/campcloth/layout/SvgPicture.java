package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing read back: what a reader of the paper would find. */
final class SvgPicture {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");
    private static final double MARGIN_MM = 10;
    private static final double PAPER_MM = 210;

    final Document document;
    final double[] frame;

    SvgPicture(String svg) throws Exception {
        document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        frame = numbers(document.getDocumentElement().getAttribute("viewBox"));
    }

    List<Element> all(String tag) {
        NodeList nodes = document.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    boolean has(String id) {
        return all("g").stream().anyMatch(g -> g.getAttribute("id").equals(id));
    }

    String description() {
        return all("desc").get(0).getTextContent();
    }

    /** Words on each part by what its title says. */
    Map<String, List<String>> parts() {
        Map<String, List<String>> parts = new LinkedHashMap<>();
        for (Element group : all("g")) {
            if (group.getAttribute("id").startsWith("part-")) {
                List<String> words = new ArrayList<>();
                NodeList texts = group.getElementsByTagName("text");
                for (int i = 0; i < texts.getLength(); i++) {
                    words.add(texts.item(i).getTextContent());
                }
                String title = group.getElementsByTagName("title").item(0).getTextContent();
                assertThat(parts.put(title, words)).as(title).isNull();
            }
        }
        return parts;
    }

    List<String> list() {
        return all("g").stream()
                .filter(g -> g.getAttribute("id").equals("cut-list"))
                .flatMap(g -> {
                    List<String> lines = new ArrayList<>();
                    NodeList texts = g.getElementsByTagName("text");
                    for (int i = 0; i < texts.getLength(); i++) {
                        lines.add(texts.item(i).getTextContent());
                    }
                    return lines.stream();
                })
                .toList();
    }

    /** The smallest letters in mm, printed on A4 as wide as its margins leave; a page of A4 is printed as it is. */
    double leastTextMm() {
        boolean page = document.getDocumentElement().getAttribute("width").equals("210mm");
        double mm = page ? PAPER_MM / frame[2] : (PAPER_MM - 2 * MARGIN_MM) / frame[2];
        return mm
                * all("text").stream()
                        .mapToDouble(t -> Double.parseDouble(t.getAttribute("font-size")))
                        .min()
                        .orElseThrow();
    }

    /** Every point of a path or circle and every end of a text lies within the frame. */
    void assertNothingOutside() {
        for (Element path : all("path")) {
            if (!((Element) path.getParentNode()).getTagName().equals("pattern")
                    && !path.getAttribute("fill").startsWith("url")) {
                double[] xy = numbers(path.getAttribute("d"));
                for (int i = 0; i + 1 < xy.length; i += 2) {
                    assertInside(xy[i], xy[i + 1], path.getAttribute("d"));
                }
            }
        }
        for (Element text : all("text")) {
            String transform = text.getAttribute("transform");
            double[] at = transform.isEmpty()
                    ? numbers(text.getAttribute("x") + " " + text.getAttribute("y"))
                    : numbers(transform.substring(0, transform.indexOf(')')));
            double size = Double.parseDouble(text.getAttribute("font-size"));
            String words = text.getTextContent();
            double length =
                    words.codePoints().mapToDouble(c -> c > 0x2000 ? 1 : 0.56).sum() * size * 0.9;
            double before = switch (text.getAttribute("text-anchor")) {
                case "middle" -> length / 2;
                case "end" -> length;
                default -> 0;
            };
            if (transform.isEmpty()) {
                assertInside(at[0] - before, at[1] - 0.7 * size, words);
                assertInside(at[0] - before + length, at[1], words);
            } else {
                assertInside(at[0] - 0.7 * size, at[1] + before, words);
                assertInside(at[0], at[1] + before - length, words);
            }
        }
    }

    private void assertInside(double x, double y, String which) {
        assertThat(x).as(which).isBetween(frame[0], frame[0] + frame[2]);
        assertThat(y).as(which).isBetween(frame[1], frame[1] + frame[3]);
    }

    static double[] numbers(String words) {
        Matcher matcher = NUMBER.matcher(words);
        List<Double> numbers = new ArrayList<>();
        while (matcher.find()) {
            numbers.add(Double.parseDouble(matcher.group()));
        }
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
