package campcloth.pages;

import campcloth.access.NotAllowed;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.springframework.beans.InvalidPropertyException;
import org.springframework.validation.BindingResult;
import org.springframework.validation.FieldError;

/** Brings what the core refuses to the fields of a form, in the core's own words; what the asker may not do stands above it. */
public final class FormErrors {

    private static final String CODE = "refused";

    private FormErrors() {}

    /**
     * Runs what the form asks for. A refusal is noted at the field of that name, or above the form where there is none.
     *
     * @param field turns the path that the core refuses into the path of the form's field
     */
    public static <T> Optional<T> caught(BindingResult form, UnaryOperator<String> field, Supplier<T> asked) {
        try {
            return Optional.of(asked.get());
        } catch (Refused refused) {
            refused.refusals().forEach(refusal -> note(form, field.apply(refusal.field()), refusal));
            return Optional.empty();
        } catch (NotAllowed notAllowed) {
            form.reject(CODE, String.valueOf(notAllowed.getMessage()));
            return Optional.empty();
        }
    }

    /** The same where form and core call their fields alike. */
    public static <T> Optional<T> caught(BindingResult form, Supplier<T> asked) {
        return caught(form, UnaryOperator.identity(), asked);
    }

    private static void note(BindingResult form, String field, Refusal refusal) {
        String sentence = ForMakers.words(refusal.sentence());
        if (isUnreadable(form, field)) {
            return;
        }
        if (isThere(form, field)) {
            form.rejectValue(field, CODE, sentence);
        } else {
            form.reject(CODE, refusal.field().isEmpty() ? sentence : refusal.field() + ": " + sentence);
        }
    }

    /** What could not be read is told as that alone: to the core it is missing. */
    private static boolean isUnreadable(BindingResult form, String field) {
        return !field.isEmpty() && form.getFieldErrors(field).stream().anyMatch(FieldError::isBindingFailure);
    }

    private static boolean isThere(BindingResult form, String field) {
        if (field.isEmpty()) {
            return false;
        }
        try {
            form.getFieldValue(field);
            return true;
        } catch (InvalidPropertyException none) {
            return false;
        }
    }
}
