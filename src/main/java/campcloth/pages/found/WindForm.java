package campcloth.pages.found;

import campcloth.cloth.Cloths;
import campcloth.cloth.WindReference;
import campcloth.cloth.WindTest;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A bag emptied through this cloth and through one that is known. */
public class WindForm {

    private static final String TOLD = "told with the swatch";

    public @Nullable String referenceClothId;
    public @Nullable String referenceName;
    public @Nullable Double referenceMmS;
    public @Nullable Double referenceLowMmS;
    public @Nullable Double referenceHighMmS;
    public List<@Nullable Double> referenceSeconds = new ArrayList<>();
    public List<@Nullable Double> seconds = new ArrayList<>();
    public @Nullable Double massG;
    public @Nullable Double areaCm2;

    boolean isEmpty() {
        return referenceSeconds.isEmpty()
                && seconds.isEmpty()
                && Typed.nothing(
                        referenceClothId,
                        referenceName,
                        referenceMmS,
                        referenceLowMmS,
                        referenceHighMmS,
                        massG,
                        areaCm2);
    }

    void tidy() {
        Typed.removeEmpty(referenceSeconds);
        Typed.removeEmpty(seconds);
    }

    void makeRoom(int more) {
        Typed.fill(referenceSeconds, 3 + more, WindTest.MOST_TIMES);
        Typed.fill(seconds, 3 + more, WindTest.MOST_TIMES);
    }

    WindTest test(Cloths cloths, String clothId) {
        WindReference beside = beside(cloths, clothId);
        return new WindTest(
                beside.name(),
                beside.airPermeabilityMmS(),
                Typed.all("referenceSeconds", referenceSeconds),
                Typed.all("seconds", seconds),
                Typed.needed("massG", massG),
                Typed.needed("areaCm2", areaCm2));
    }

    private WindReference beside(Cloths cloths, String clothId) {
        if (referenceClothId != null && referenceMmS == null) {
            return WindReference.kept(cloths, clothId, referenceClothId);
        }
        if (referenceClothId != null) {
            throw Refused.of("referenceMmS", "stands beside a cloth that was chosen", "leave one of the two empty");
        }
        double value = Typed.needed("referenceMmS", referenceMmS);
        Figure figure = Refused.within(
                "reference",
                () -> new Figure(
                        value,
                        referenceLowMmS == null ? value : referenceLowMmS,
                        referenceHighMmS == null ? value : referenceHighMmS,
                        Basis.DECLARED,
                        TOLD));
        return Refused.within(
                "reference", () -> WindReference.told(referenceName == null ? "" : referenceName, figure));
    }
}
