package campcloth.pages.plan;

import campcloth.advice.Verdict;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.WeightClass;
import campcloth.fibre.Fibres;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Which of the ranked cloths are shown, and how many of them. */
public final class ClothFilter {

    static final int STEP = 15;
    private static final int MOST_SHOWN = 500;

    public @Nullable String text;

    /** Key of a fibre that the blend contains. */
    public @Nullable String fibre;

    public @Nullable WeightClass weightClass;

    /** In EUR by the metre, in whichever units lengths are shown. */
    public @Nullable Double mostPrice;

    public @Nullable Verdict verdict;

    /** How many of those that may be worn. */
    public @Nullable Integer show;

    /** How many of those that are ruled out. */
    public @Nullable Integer showOut;

    /** Refuses a fibre that is not known and a text that is too long. */
    ClothSearch search(Fibres fibres) {
        return new ClothSearch(
                Optional.ofNullable(text),
                Stream.ofNullable(fibre)
                        .map(key -> fibres.require(key, "fibre").key())
                        .collect(Collectors.toSet()),
                Optional.empty(),
                Optional.empty(),
                Stream.ofNullable(weightClass).collect(Collectors.toSet()),
                Set.of(),
                Set.of(),
                Optional.empty(),
                Optional.ofNullable(mostPrice));
    }

    boolean shows(Verdict of) {
        return verdict == null || verdict == of;
    }

    int shown() {
        return bounded(show, STEP);
    }

    int shownOut() {
        return bounded(showOut, STEP / 3);
    }

    private static int bounded(@Nullable Integer asked, int usual) {
        return asked == null ? usual : Math.max(1, Math.min(MOST_SHOWN, asked));
    }

    /** The same as the part of an address behind the asked form's; how many are shown is left out. */
    String query() {
        String written = new QueryText()
                .add("text", text)
                .add("fibre", fibre)
                .add("weightClass", weightClass)
                .add("mostPrice", mostPrice)
                .add("verdict", verdict)
                .toString();
        return written.isEmpty() ? "" : "&" + written;
    }
}
