package campcloth.pages.found;

import campcloth.cloth.Cloths;
import campcloth.cloth.DripTest;
import campcloth.cloth.LayerStack;
import campcloth.cloth.Swatch;
import campcloth.cloth.WashedMarks;
import campcloth.cloth.WeighedPieces;
import campcloth.figure.DayText;
import campcloth.figure.Refused;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What somebody measured, as it is typed: five parts of which those count that have anything in them. */
public class SwatchForm {

    public @Nullable String measuredOn;
    public @Nullable String note;
    public boolean conditioned;
    public WeighedForm weighed = new WeighedForm();
    public WashedForm washed = new WashedForm();
    public StackForm stack = new StackForm();
    public WindForm wind = new WindForm();
    public DripForm drip = new DripForm();

    /** Layers under a weight. */
    public static class StackForm {

        public @Nullable Double stackMm;
        public @Nullable Integer layers;
        public @Nullable Double massG;
        public @Nullable Double areaCm2;
        public @Nullable Double readingStepMm;

        boolean isEmpty() {
            return Typed.nothing(stackMm, layers, massG, areaCm2, readingStepMm);
        }

        LayerStack stack() {
            return new LayerStack(
                    Typed.needed("stackMm", stackMm),
                    Typed.needed("layers", layers),
                    Typed.needed("massG", massG),
                    Typed.needed("areaCm2", areaCm2),
                    Typed.needed("readingStepMm", readingStepMm));
        }
    }

    /** Drops of water. */
    public static class DripForm {

        public List<@Nullable Double> seconds = new ArrayList<>();
    }

    /** Takes out what was left empty, so that rows count as they are told. */
    void tidy() {
        weighed.pieces.removeIf(WeighedForm.PieceForm::isEmpty);
        washed.tidy();
        wind.tidy();
        Typed.removeEmpty(drip.seconds);
    }

    /** Makes room to type in. */
    void makeRoom(int more) {
        Typed.fill(weighed.pieces, 3 + more, WeighedPieces.MOST_PIECES, WeighedForm.PieceForm::new);
        washed.makeRoom(more);
        wind.makeRoom(more);
        Typed.fill(drip.seconds, 5 + more, DripTest.MOST_DROPS);
    }

    /** The swatch meant, by the names of the core's fields. */
    Swatch swatch(LocalDate today, Cloths cloths, String clothId) {
        LocalDate day = Swatch.day(DayText.day("measuredOn", Optional.ofNullable(measuredOn)), today);
        Optional<WeighedPieces> pieces = part("weighed", weighed.isEmpty(), weighed::weighed);
        Optional<WashedMarks> marks = part("washed", washed.isEmpty(), washed::marks);
        return new Swatch(
                day,
                note == null ? "" : note,
                conditioned,
                pieces,
                marks,
                part("stack", stack.isEmpty(), stack::stack),
                part("wind", wind.isEmpty(), () -> wind.test(cloths, clothId)),
                part("drip", drip.seconds.isEmpty(), () -> new DripTest(Typed.all("seconds", drip.seconds))));
    }

    /** The form's field for a field that the core names. */
    static String field(String path) {
        return switch (path) {
            case "washed.warp", "washed.weft" -> path + "[0].beforeCm";
            case "wind.reference", "wind.reference.low", "wind.reference.airPermeabilityMmS" -> "wind.referenceMmS";
            default -> path.endsWith(".afterCm") || path.endsWith("econds") ? path + "[0]" : path;
        };
    }

    private static <T> Optional<T> part(String field, boolean empty, Supplier<T> meant) {
        return empty ? Optional.empty() : Optional.of(Refused.within(field, meant));
    }
}
