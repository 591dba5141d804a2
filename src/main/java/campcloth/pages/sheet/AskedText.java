package campcloth.pages.sheet;

import campcloth.figure.Refused;
import campcloth.pages.RowNumbers;
import campcloth.pages.plan.AskedForm;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.beans.InvalidPropertyException;
import org.springframework.beans.MutablePropertyValues;
import org.springframework.core.convert.support.DefaultConversionService;
import org.springframework.validation.DataBinder;

/**
 * Event and garment as {@link AskedForm#query} writes them, carried in one field of a form: their numbers stay metric whatever the
 * units of the form around them.
 */
final class AskedText {

    private static final int LONGEST = 24_000;
    private static final int MOST_PARTS = 150;

    private AskedText() {}

    static AskedForm read(String text) {
        String[] parts = text.split("&", MOST_PARTS + 1);
        if (text.length() > LONGEST || parts.length > MOST_PARTS) {
            throw unreadable();
        }
        Map<String, List<String>> told = new LinkedHashMap<>();
        for (String part : parts) {
            int equals = part.indexOf('=');
            if (equals > 0) {
                told.computeIfAbsent(decoded(part.substring(0, equals)), name -> new ArrayList<>())
                        .add(decoded(part.substring(equals + 1)));
            }
        }
        if (!told.keySet().stream().allMatch(RowNumbers::areInReach)) {
            throw unreadable();
        }
        MutablePropertyValues values = new MutablePropertyValues();
        told.forEach((name, texts) -> values.add(name, texts.size() == 1 ? texts.get(0) : texts));
        AskedForm asked = new AskedForm();
        DataBinder binder = new DataBinder(asked);
        binder.initDirectFieldAccess();
        binder.setConversionService(new DefaultConversionService());
        try {
            binder.bind(values);
        } catch (InvalidPropertyException noField) {
            throw unreadable();
        }
        if (binder.getBindingResult().hasErrors()) {
            throw unreadable();
        }
        return asked;
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            throw unreadable();
        }
    }

    private static Refused unreadable() {
        return Refused.of("asked", "cannot be read", "go back to the plan and choose the cloth again");
    }
}
