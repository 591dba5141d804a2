package campcloth.cloth;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Swatches with one measurement each. */
public final class SwatchSamples {

    public static final LocalDate DAY = LocalDate.of(2026, 11, 24);
    static final Washing UNTOLD = new Washing(Optional.empty(), Optional.empty(), Optional.empty());

    private SwatchSamples() {}

    static Swatch weighed(double scaleStepG, WeighedPieces.Piece... pieces) {
        return swatch(
                DAY,
                Optional.of(new WeighedPieces(List.of(pieces), scaleStepG, 1)),
                Optional.empty(),
                Optional.empty());
    }

    public static Swatch warp(LocalDate day, MarkPair... pairs) {
        return swatch(day, Optional.empty(), Optional.of(marks(List.of(pairs))), Optional.empty());
    }

    static WashedMarks marks(List<MarkPair> warp) {
        return new WashedMarks(warp, List.of(), Optional.empty(), Optional.empty(), 1, UNTOLD);
    }

    static Swatch stack(LayerStack stack) {
        return swatch(DAY, Optional.empty(), Optional.empty(), Optional.of(stack));
    }

    static Swatch wind(WindTest wind) {
        return new Swatch(
                DAY,
                "",
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(wind),
                Optional.empty());
    }

    static Swatch drip(Double... seconds) {
        return new Swatch(
                DAY,
                "",
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new DripTest(List.of(seconds))));
    }

    private static Swatch swatch(
            LocalDate day, Optional<WeighedPieces> weighed, Optional<WashedMarks> washed, Optional<LayerStack> stack) {
        return new Swatch(
                day, "by\u202e the\r\nriver", true, weighed, washed, stack, Optional.empty(), Optional.empty());
    }
}
