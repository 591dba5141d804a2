package campcloth.journey;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.web.util.HtmlUtils;

/** What a browser would send of the forms of a page if nobody touched them. */
final class FormFields {

    private static final Pattern FIELD = Pattern.compile(
            "<input\\b([^>]*)>|<textarea\\b([^>]*)>([^<]*)</textarea>|<select\\b([^>]*)>(.*?)</select>",
            Pattern.DOTALL);
    private static final Pattern OPTION = Pattern.compile("<option\\b([^>]*)>");

    private FormFields() {}

    static Map<String, String> of(String page) {
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher field = FIELD.matcher(page);
        while (field.find()) {
            if (field.group(1) != null) {
                String tag = field.group(1);
                boolean ticked = tag.contains("type=\"checkbox\"") || tag.contains("type=\"radio\"");
                if (!ticked || tag.contains("checked")) {
                    put(fields, tag, attribute(tag, "value").orElse(""));
                }
            } else if (field.group(2) != null) {
                put(fields, field.group(2), field.group(3));
            } else {
                put(fields, field.group(4), chosen(field.group(5)));
            }
        }
        return fields;
    }

    private static String chosen(String options) {
        return OPTION.matcher(options)
                .results()
                .map(found -> found.group(1))
                .reduce((one, other) -> one.contains("selected") ? one : other.contains("selected") ? other : one)
                .flatMap(tag -> attribute(tag, "value"))
                .orElse("");
    }

    private static void put(Map<String, String> fields, String tag, String value) {
        attribute(tag, "name")
                .ifPresent(name -> fields.put(HtmlUtils.htmlUnescape(name), HtmlUtils.htmlUnescape(value)));
    }

    private static Optional<String> attribute(String tag, String name) {
        Matcher found = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(tag);
        return found.find() ? Optional.of(found.group(1)) : Optional.empty();
    }
}
