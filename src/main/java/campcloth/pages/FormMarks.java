package campcloth.pages;

import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Gives every page a mark for its forms that make something. */
@ControllerAdvice("campcloth.pages")
class FormMarks {

    private final OnceOnly onceOnly;

    FormMarks(OnceOnly onceOnly) {
        this.onceOnly = onceOnly;
    }

    @ModelAttribute(OnceOnly.FIELD)
    String mark() {
        return onceOnly.mark();
    }
}
