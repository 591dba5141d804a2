package campcloth.comfort;

import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Wear;
import campcloth.comfort.WornGarment.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is worn besides the garment that is to be sewn, in one spell of an event: what was told, and what is presumed of the kinds
 * that nobody spoke of, by the cold of that spell. Which garments those are is a choice of the project ({@link GarmentList}). A
 * part told takes the place of all that is presumed of its kind, in the spells in which it is not worn, too.
 *
 * @param garments the garments
 * @param sewnIn cloths sewn into the garment itself
 */
public record Wardrobe(List<WornGarment> garments, List<Sheets> sewnIn) {

    /** At this air temperature or below warm underwear, thick hose and boots are presumed: where ISO 11079 begins. */
    public static final double COLD_C = 10;

    /** At this air temperature or below head and hands are presumed covered and another layer worn beneath: project choice. */
    public static final double BITTER_C = 5;

    /**
     * A garment that covers less than this is presumed to be worn with an ordinary tunic, percent of the body: trousers and
     * skirts leave the upper body bare, a tabard covers it.
     */
    private static final double WHOLE_GARMENT_PERCENT = 50;

    public Wardrobe {
        garments = List.copyOf(garments);
        sewnIn = List.copyOf(sewnIn);
    }

    /**
     * The wardrobe that goes with a garment worn that way in air of that temperature.
     *
     * @param outfit as it is worn then
     */
    public static Wardrobe with(Wear wear, double airC, Outfit outfit) {
        List<WornGarment> garments = new ArrayList<>();
        presumed(wear, airC).stream()
                .filter(garment -> garment.kind().filter(outfit::has).isEmpty())
                .forEach(garments::add);
        garments.addAll(ToldGarments.of(outfit, airC <= COLD_C));
        return new Wardrobe(garments, ToldGarments.sewnIn(outfit));
    }

    private static List<WornGarment> presumed(Wear wear, double airC) {
        List<WornGarment> garments = new ArrayList<>(
                airC <= COLD_C
                        ? List.of(
                                GarmentList.DRAWERS,
                                GarmentList.WARM_BOTTOMS,
                                GarmentList.THICK_HOSE,
                                GarmentList.THICK_SOCKS,
                                GarmentList.BOOTS)
                        : List.of(GarmentList.DRAWERS, GarmentList.THIN_HOSE, GarmentList.SOCKS, GarmentList.SHOES));
        if (airC <= BITTER_C) {
            garments.addAll(List.of(GarmentList.HOOD, GarmentList.MITTENS));
        }
        if (!wear.nextToSkin()) {
            garments.addAll(beneath(airC));
        }
        if (wear.coveredPercent() < WHOLE_GARMENT_PERCENT) {
            garments.add(GarmentList.TUNIC);
        }
        if (wear.layer() != Layer.OUTER) {
            garments.add(GarmentList.OVERGARMENT);
        }
        return garments;
    }

    private static List<WornGarment> beneath(double airC) {
        if (airC > COLD_C) {
            return List.of(GarmentList.SHIRT);
        }
        return airC > BITTER_C
                ? List.of(GarmentList.WARM_TOP, GarmentList.SHIRT)
                : List.of(GarmentList.WARM_TOP, GarmentList.SHIRT, GarmentList.UNDER_TUNIC);
    }

    /** How cold air has to be told apart for what is presumed: the same number, the same wardrobe. */
    static int coldness(double airC) {
        return airC <= BITTER_C ? 2 : airC <= COLD_C ? 1 : 0;
    }

    /** With so much insulation more beneath, clo, of no kind that could be told. */
    Wardrobe withBeneath(double clo) {
        if (clo == 0) {
            return this;
        }
        List<WornGarment> more = new ArrayList<>(garments);
        more.add(new WornGarment(
                "more beneath", Optional.empty(), Reading.exact(clo), "added", Standing.PRESUMED, Optional.empty()));
        return new Wardrobe(more, sewnIn);
    }

    /** Sum of the garments' insulation at their best figures, clo. */
    public double clo() {
        return clo(End.MIDDLE);
    }

    double clo(End end) {
        return garments.stream().mapToDouble(garment -> end.of(garment.clo())).sum();
    }

    /** Insulation of what is worn of a kind, clo; 0 where none is. */
    public double clo(Kind kind) {
        return garments.stream()
                .filter(garment -> garment.is(kind))
                .mapToDouble(garment -> garment.clo().value())
                .sum();
    }

    /** Insulation of the warmest garment of a kind in the lists, clo. */
    public static double warmestClo(Kind kind) {
        return ToldGarments.listedClo(kind, true);
    }

    /** What is really worn of a kind; what was said not to be worn is left out. */
    List<WornGarment> worn(Kind kind) {
        return garments.stream()
                .filter(garment -> garment.is(kind) && garment.clo().value() > 0)
                .toList();
    }

    /** Whether somebody said that something of the kind is worn. */
    public boolean isTold(Kind kind) {
        return worn(kind).stream().anyMatch(garment -> garment.standing() == Standing.TOLD);
    }
}
