package campcloth.garment;

import campcloth.cloth.Finish;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Range;
import java.util.Optional;
import java.util.Set;

/**
 * What sewing must know of a cloth.
 *
 * @param weightGsm mass per area, g/m2
 * @param thicknessMm thickness at about 1 kPa, mm
 * @param surface plain or raised
 * @param weave how it is bound, where known
 * @param finish what was done to it, where known
 * @param mainFibre key of the fibre with the greatest share, where known
 * @param residualWarpPercent shrinkage along the cloth that is still to come after cutting (0 for pre-washed cloth)
 * @param residualWeftPercent the same across the cloth
 * @param usableWidthCm width between the selvedges, as it is cut
 */
public record SewnCloth(
        double weightGsm,
        double thicknessMm,
        Surface surface,
        Optional<Weave> weave,
        Optional<Finish> finish,
        Optional<String> mainFibre,
        double residualWarpPercent,
        double residualWeftPercent,
        double usableWidthCm) {

    private static final Range RESIDUAL = new Range("residualPercent", -5, 40, "%");

    /** Project choice: from here on a folded edge is thick enough to want a wider second fold. */
    private static final double BULKY_GSM = 300;

    private static final double USUAL_WIDTH_CM = 140;

    private static final double FRAYING_CM = 0.5;

    private static final double BULKY_MM = 1.0;

    /** Gauze, voile and thin silk; common practice, no source. */
    private static final double FINE_GSM = 80;

    private static final Set<String> WOOLS =
            Set.of("wool", "alpaca", "llama", "camel", "cashmere", "mohair", "angora", "yak", "guanaco", "vicuna");
    private static final Set<String> STIFF_PLANT_FIBRES = Set.of("flax", "hemp", "ramie", "cotton", "jute");

    public SewnCloth {
        RESIDUAL.check(residualWarpPercent);
        RESIDUAL.check(residualWeftPercent);
    }

    /** Medium plain cloth without shrinkage to come: what is reckoned with before a cloth is chosen. */
    public static SewnCloth usual() {
        return new SewnCloth(
                200, 0.5, Surface.PLAIN, Optional.empty(), Optional.empty(), Optional.empty(), 0, 0, USUAL_WIDTH_CM);
    }

    /** Length to cut so that the finished length remains after washing: L / (1 - s). */
    public double alongCm(double finishedCm) {
        return finishedCm / (1 - residualWarpPercent / 100);
    }

    /** The same across the cloth. */
    public double acrossCm(double finishedCm) {
        return finishedCm / (1 - residualWeftPercent / 100);
    }

    /** Thick when folded, by weight, thickness or pile; a face that was only brushed up does not make it so. */
    public boolean isBulky() {
        return weightGsm >= BULKY_GSM
                || thicknessMm >= BULKY_MM
                || hasPile()
                || weave.filter(Weave.FLEECE::equals).isPresent();
    }

    /** Velvet, plush, long pile: what an iron crushes. */
    public boolean hasPile() {
        return weave.filter(w -> w == Weave.PILE || w == Weave.FUR).isPresent();
    }

    /** So light that a deep fold shows through and drags. */
    public boolean isFine() {
        return weightGsm < FINE_GSM && !isBulky();
    }

    /** Felted, so that a cut edge holds without being neatened. */
    public boolean holdsItsCutEdge() {
        return finish.filter(Finish.FULLED::equals).isPresent()
                || weave.filter(Weave.FELT::equals).isPresent();
    }

    /** Holds a pressed crease: smooth woven cloth of plant fibre, or of a fibre not named. */
    public boolean isCrisp() {
        return !isBulky()
                && !isFine()
                && surface == Surface.PLAIN
                && weave.filter(w -> w.isKnit() || w == Weave.SATIN).isEmpty()
                && mainFibre.map(STIFF_PLANT_FIBRES::contains).orElse(true);
    }

    public boolean isWool() {
        return mainFibre.filter(WOOLS::contains).isPresent();
    }

    /** Cloth left beyond a seam line where so much was chosen: more on cloth that frays (common practice, no source). */
    public double seamAllowanceCm(double chosenCm) {
        return frays() ? chosenCm + FRAYING_CM : chosenCm;
    }

    public boolean frays() {
        return weave.filter(Weave.OPEN_PLAIN::equals).isPresent() && !holdsItsCutEdge();
    }

    /**
     * Fullness that an edge takes up without pleats, percent of its width. Common practice, no source: wool a few percent
     * under steam, plant fibres little.
     */
    public double easablePercent() {
        if (isWool()) {
            return 3;
        }
        return mainFibre.filter(STIFF_PLANT_FIBRES::contains).isPresent() ? 0.5 : 1;
    }
}
