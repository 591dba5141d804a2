package campcloth.pages;

import campcloth.figure.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.propertyeditors.StringTrimmerEditor;

/** Texts as people type them: without spaces at the ends, lines ended alike on every machine, nothing that cannot be kept. */
final class TypedText extends StringTrimmerEditor {

    TypedText() {
        super(true);
    }

    @Override
    public void setAsText(@Nullable String text) {
        if (text != null && !Words.canBeKept(text)) {
            throw new IllegalArgumentException("has control characters");
        }
        super.setAsText(text == null ? null : text.replace("\r\n", "\n"));
    }
}
