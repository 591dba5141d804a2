package campcloth.rest;

import campcloth.event.FireRole;
import campcloth.figure.Words;
import campcloth.fire.ClothingUse;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.converter.HttpMessageNotReadableException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.InputCoercionException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.exc.InvalidFormatException;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** Says of a body that is not the JSON expected where it goes wrong and what was wanted there. */
final class Unreadable {

    private static final String WHOLE_BODY = "(body)";

    private Unreadable() {}

    static FieldError error(HttpMessageNotReadableException unreadable) {
        for (Throwable cause = unreadable; cause != null; cause = cause.getCause()) {
            if (cause instanceof JacksonException json) {
                return new FieldError(path(json), message(json));
            }
        }
        return new FieldError(WHOLE_BODY, "is missing; send a JSON object");
    }

    private static String message(JacksonException json) {
        if (json instanceof UnrecognizedPropertyException unknown) {
            return "is not a field known here; known are " + unknown.getKnownPropertyIds();
        }
        if (json instanceof InvalidFormatException format
                && format.getTargetType() == String.class
                && format.getValue() instanceof String) {
            return "has characters that cannot be kept; leave out control characters and broken ones";
        }
        if (json instanceof InvalidFormatException format && namesAPerformance(format)) {
            return Words.quoted(String.valueOf(format.getValue()))
                    + " is not a role at a fire; say it in use (of the request or of its"
                    + " garment), as "
                    + ClothingUse.FIRE_PERFORMANCE + " or " + ClothingUse.PYROTECHNICS
                    + ": the answer then tells whom to ask. Roles are " + Arrays.toString(FireRole.values());
        }
        if (json instanceof InvalidFormatException format) {
            return Words.quoted(String.valueOf(format.getValue())) + " is not " + wanted(format.getTargetType());
        }
        if (json instanceof MismatchedInputException mismatch) {
            return "is not " + wanted(mismatch.getTargetType());
        }
        if (json instanceof InputCoercionException) {
            return "is a number that is too large; give a smaller one";
        }
        if (json.getOriginalMessage().startsWith("Duplicate")) {
            return "has a field twice, at line " + json.getLocation().getLineNr() + ", column "
                    + json.getLocation().getColumnNr() + "; leave one out";
        }
        if (json instanceof StreamReadException stream) {
            return "is not JSON in UTF-8 at line " + stream.getLocation().getLineNr() + ", column "
                    + stream.getLocation().getColumnNr();
        }
        return "cannot be read";
    }

    private static boolean namesAPerformance(InvalidFormatException format) {
        String written = String.valueOf(format.getValue()).toUpperCase(Locale.ROOT);
        return format.getTargetType() == FireRole.class && (written.contains("PERFORM") || written.contains("PYRO"));
    }

    static String wanted(@Nullable Class<?> type) {
        if (type == null) {
            return "a value of the right form";
        }
        if (type.isEnum()) {
            return "a word known here; write one of " + Arrays.toString(type.getEnumConstants());
        }
        if (type == Integer.class || type == int.class || type == Long.class) {
            return "a whole number; give one without quotes, as 12";
        }
        if (type == Double.class || type == double.class) {
            return "a number; give one without quotes, as 12.5";
        }
        if (type == Boolean.class || type == boolean.class) {
            return "true or false; write one of them without quotes";
        }
        if (Collection.class.isAssignableFrom(type)) {
            return "a list; write it in [ ]";
        }
        return type == String.class ? "text; write it in quotes" : "an object; write its fields in { }";
    }

    private static String path(JacksonException json) {
        StringBuilder path = new StringBuilder();
        for (JacksonException.Reference step : json.getPath()) {
            if (step.getPropertyName() == null) {
                path.append('[').append(step.getIndex()).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(Words.shortened(step.getPropertyName()));
            }
        }
        return path.isEmpty() ? WHOLE_BODY : path.toString();
    }
}
