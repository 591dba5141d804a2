package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.ClothTraits;
import campcloth.cloth.Estimates;
import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Wear;
import campcloth.cloth.Weave;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.figure.Figure;
import campcloth.fire.Exposure;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireGrading;
import campcloth.fire.FireHazard;
import campcloth.fire.WornCloth;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * The traits of a cloth in what is usual at a camp: a loose tunic over a shirt, nothing over it, its wearer seated two metres from
 * the middle of a fire whose size nobody told ({@link Exposure#PRESUMED_KW} kW). Project choice. Rules of an event, another garment
 * or another fire can only be asked about by asking for advice.
 */
public final class UsualTraits implements ClothTraiter {

    /** To be raised whenever the same cloth may get other traits than before. */
    static final int RULES = 1;

    static final Wear TUNIC_OVER_A_SHIRT = new Wear(false, Layer.OUTER, Fit.LOOSE, false, 65, 1.7);

    static final Exposure SEATED_AT_TWO_METRES = new Exposure(FireRole.SEATED, Optional.of(2.0), Optional.empty());

    private static final Exposure HANDS_AT_THE_FIRE =
            new Exposure(FireRole.COOKING, Optional.empty(), Optional.empty());

    /** What no trait hangs on, so that cloths that differ in nothing else are computed once. */
    private static final Set<Property> UNASKED = EnumSet.of(
            Property.WIDTH_CM, Property.SHRINK_WARP_PERCENT, Property.SHRINK_WEFT_PERCENT, Property.PRICE_PER_METRE);

    /** So many are remembered: a few megabytes. */
    private static final int MOST_REMEMBERED = 10_000;

    private final Map<Season, SeasonSuit> suits = new EnumMap<>(Season.class);
    private final Map<Cloth, ClothTraits> remembered = new ConcurrentHashMap<>();
    private final String rules;

    public UsualTraits(FireAdvice fire, Seasons seasons, Fibres fibres) {
        Cloth any = Estimates.complete(anyCloth(fibres));
        for (Season season : Season.values()) {
            Event event = new Event("", season, seasons.spells(season), List.of(), true);
            suits.put(season, new SeasonSuit(event, TUNIC_OVER_A_SHIRT, fire, any));
        }
        this.rules = RULES + "\n" + suits.values() + "\n" + fibres.all();
    }

    @Override
    public ClothTraits of(Cloth cloth) {
        if (remembered.size() >= MOST_REMEMBERED) {
            remembered.clear();
        }
        return remembered.computeIfAbsent(asked(cloth), this::computed);
    }

    /** The cloth without all that no trait hangs on. */
    private static Cloth asked(Cloth cloth) {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        figures.putAll(cloth.figures());
        figures.keySet().removeAll(UNASKED);
        return new Cloth(
                "any",
                cloth.blend(),
                cloth.weave(),
                cloth.surface(),
                cloth.finish(),
                false,
                cloth.stretch(),
                figures,
                "",
                cloth.flameTreatment());
    }

    private ClothTraits computed(Cloth cloth) {
        Cloth completed = Estimates.complete(cloth);
        Set<String> seasons = suits.entrySet().stream()
                .filter(suit -> suit.getValue().suits(completed))
                .map(suit -> suit.getKey().name())
                .collect(Collectors.toSet());
        return new ClothTraits(seasons, seatedAtAFire(completed).grade().name());
    }

    /** How a completed cloth stands where it is usually worn by a fire: what its trait is the grade of. */
    public static FireHazard seatedAtAFire(Cloth completed) {
        return FireGrading.grade(WornCloth.of(completed, TUNIC_OVER_A_SHIRT), SEATED_AT_TWO_METRES);
    }

    /** The same tunic where its wearer's hands are at the fire, as in cooking. */
    public static FireHazard handsAtAFire(Cloth completed) {
        return FireGrading.grade(WornCloth.of(completed, TUNIC_OVER_A_SHIRT), HANDS_AT_THE_FIRE);
    }

    @Override
    public String rules() {
        return rules;
    }

    private static Cloth anyCloth(Fibres fibres) {
        return new Cloth(
                "any",
                Blend.pure(fibres.require(Fibre.UNKNOWN)),
                Weave.PLAIN,
                Surface.PLAIN,
                Finish.NONE,
                false,
                false,
                Map.of(),
                "");
    }
}
