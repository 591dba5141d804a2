package campcloth.pages.sheet;

import campcloth.errand.WantedGarment;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What the buttons of the form do to its wearers.
 *
 * @param removed number of the one that goes; empty where one is added
 */
record WearerRows(Optional<Integer> removed) {

    private static final Pattern BUTTON = Pattern.compile("add-wearer|remove-wearer-(\\d{1,3})");

    /** The button that was pressed; empty where it was the one that makes the sheet. */
    static Optional<WearerRows> pressed(@Nullable String button) {
        if (button == null) {
            return Optional.empty();
        }
        Matcher parts = BUTTON.matcher(button);
        return parts.matches()
                ? Optional.of(new WearerRows(Optional.ofNullable(parts.group(1)).map(Integer::valueOf)))
                : Optional.empty();
    }

    /**
     * Does it, and tells which part of the form to go to next.
     *
     * @param readable whether everything typed could be read, so that numbers of wearers may change
     */
    String apply(BuyForm form, boolean readable) {
        removed.filter(number -> number < form.others.size()).ifPresent(number -> form.others.get(number).gone = true);
        if (removed.isEmpty() && form.othersShown().size() < WantedGarment.MOST_OTHERS) {
            form.others.add(new WearerForm());
        }
        if (readable) {
            form.others.removeIf(other -> other.gone);
        }
        return removed.isPresent() ? "wearers" : "others[" + (form.others.size() - 1) + "]";
    }
}
