package campcloth.pages.found;

import campcloth.cloth.MarkPair;
import campcloth.cloth.WashedMarks;
import campcloth.cloth.Washing;
import campcloth.figure.Refused;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Marks before and after washing. */
public class WashedForm {

    public List<PairForm> warp = new ArrayList<>();
    public List<PairForm> weft = new ArrayList<>();

    @TypedIn(Units.Measure.LENGTH_CM)
    public @Nullable Double specimenLengthCm;

    @TypedIn(Units.Measure.LENGTH_CM)
    public @Nullable Double specimenWidthCm;

    public @Nullable Double rulerStepMm;
    public WashingForm washing = new WashingForm();

    /** How it was washed. */
    public static class WashingForm {

        public @Nullable Double temperatureC;
        public Washing.@Nullable Method method;
        public Washing.@Nullable Drying drying;
    }

    /** A pair of marks. */
    public static class PairForm {

        @TypedIn(Units.Measure.LENGTH_CM)
        public @Nullable Double beforeCm;

        @TypedIn(Units.Measure.LENGTH_CM)
        public List<@Nullable Double> afterCm = new ArrayList<>();

        boolean isEmpty() {
            return beforeCm == null && afterCm.isEmpty();
        }

        MarkPair pair() {
            return new MarkPair(Typed.needed("beforeCm", beforeCm), Typed.all("afterCm", afterCm));
        }
    }

    boolean isEmpty() {
        return warp.isEmpty() && weft.isEmpty();
    }

    /** How many washes have room. */
    public int washes() {
        return Stream.concat(warp.stream(), weft.stream())
                .mapToInt(pair -> pair.afterCm.size())
                .max()
                .orElse(0);
    }

    void tidy() {
        for (List<PairForm> way : List.of(warp, weft)) {
            way.forEach(pair -> Typed.trim(pair.afterCm));
            way.removeIf(PairForm::isEmpty);
        }
    }

    void makeRoom(int more) {
        int washes = Math.max(washes(), 3 + more);
        for (List<PairForm> way : List.of(warp, weft)) {
            Typed.fill(way, 3 + more, WashedMarks.MOST_PAIRS, PairForm::new);
            way.forEach(pair -> Typed.fill(pair.afterCm, washes, MarkPair.MOST_WASHES));
        }
    }

    WashedMarks marks() {
        return new WashedMarks(
                pairs("warp", warp),
                pairs("weft", weft),
                Optional.ofNullable(specimenLengthCm),
                Optional.ofNullable(specimenWidthCm),
                rulerStepMm == null ? WashedMarks.USUAL_RULER_STEP_MM : rulerStepMm,
                Refused.within(
                        "washing",
                        () -> new Washing(
                                Optional.ofNullable(washing.temperatureC),
                                Optional.ofNullable(washing.method),
                                Optional.ofNullable(washing.drying))));
    }

    private static List<MarkPair> pairs(String field, List<PairForm> typed) {
        List<MarkPair> pairs = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            pairs.add(Refused.within(field + "[" + i + "]", typed.get(i)::pair));
        }
        return pairs;
    }
}
