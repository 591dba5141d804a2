package campcloth.pages.cloths;

import org.jspecify.annotations.Nullable;

/** A row of a blend; empty rows say nothing. */
public final class ShareForm {

    public @Nullable String fibre;
    public @Nullable Double percent;

    public ShareForm() {}

    ShareForm(String fibre, double percent) {
        this.fibre = fibre;
        this.percent = percent;
    }

    boolean isEmpty() {
        return fibre == null && percent == null;
    }
}
