package campcloth.comfort;

import static campcloth.comfort.SpellNeeds.WM2_PER_MET;

import campcloth.cloth.Cloth;
import campcloth.cloth.Outfit;
import campcloth.cloth.Wear;
import campcloth.comfort.Reading.OutOfRange;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort.Heat;
import campcloth.comfort.SpellComfort.Warmth;
import campcloth.comfort.model.ColdCriterion;
import campcloth.comfort.model.DurationLimit;
import campcloth.comfort.model.HeatHabit;
import campcloth.comfort.model.Motion;
import campcloth.comfort.model.Worn;
import campcloth.event.Place;
import campcloth.event.Spell;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Comfort of any cloth at one event: what the spells ask for is computed once, every cloth is then set against it. Each model
 * is run at the best figures of the cloth and at the two ends of their intervals: thin, open and breathing; thick, tight and
 * close. What takes time is run on a lattice, {@link GridPhysics}. May be shared between threads.
 */
public final class Comfort {

    private final List<Physics> spells;
    private final List<SpellNeeds> needs;
    private final Optional<Place> place;
    private final Outfit outfit;
    private final double beneathClo;
    private final Map<Wear, Wardrobes> wardrobes;

    private Comfort(List<Physics> spells, Optional<Place> place, Outfit outfit, double beneathClo) {
        this(spells, place, outfit, beneathClo, new ConcurrentHashMap<>());
    }

    private Comfort(
            List<Physics> spells,
            Optional<Place> place,
            Outfit outfit,
            double beneathClo,
            Map<Wear, Wardrobes> wardrobes) {
        this.spells = spells;
        this.needs = spells.stream().map(Physics::needs).toList();
        this.place = place;
        this.outfit = outfit;
        this.beneathClo = beneathClo;
        this.wardrobes = wardrobes;
    }

    /** For the spells of an event whose place is not known, of whose wearer nobody said what else is worn; at least one. */
    public static Comfort in(List<Spell> spells) {
        return in(spells, Optional.empty());
    }

    /** For the spells of an event; there must be one at least. */
    public static Comfort in(List<Spell> spells, Optional<Place> place) {
        return in(spells, place, GridPhysics::new);
    }

    /** The same without lattices: every model is run for every cloth. */
    static Comfort directly(List<Spell> spells, Optional<Place> place) {
        return in(spells, place, DirectPhysics::new);
    }

    private static Comfort in(List<Spell> spells, Optional<Place> place, Function<SpellNeeds, Physics> physics) {
        return new Comfort(
                spells.stream()
                        .map(spell -> SpellNeeds.of(spell, Surroundings.of(spell, place)))
                        .map(physics)
                        .toList(),
                place,
                Outfit.UNTOLD,
                0);
    }

    /** The same event for a wearer of that outfit. */
    public Comfort wearing(Outfit other) {
        return new Comfort(spells, place, other, beneathClo);
    }

    /** The same event for a wearer of garments of so much more insulation beneath through all spells, clo. */
    public Comfort withMoreBeneath(double clo) {
        return new Comfort(spells, place, outfit, clo);
    }

    /**
     * The same event for one certain wearer.
     *
     * @param pace how hard they work within the range of each activity, 0 to 1, for cold and for heat alike
     * @param usedToHeat how far they are used to heat, 0 to 1: {@link HeatHabit}
     */
    public Comfort forWearer(double pace, double usedToHeat) {
        HeatHabit habit = new HeatHabit(usedToHeat);
        return new Comfort(
                needs.stream()
                        .<Physics>map(need -> new DirectPhysics(
                                SpellNeeds.of(need.spell(), need.surroundings().atPace(pace)), habit))
                        .toList(),
                place,
                outfit,
                beneathClo,
                wardrobes);
    }

    /** What each spell asks for, in their order. */
    public List<SpellNeeds> needs() {
        return needs;
    }

    /** Where it is, where somebody said. */
    public Optional<Place> place() {
        return place;
    }

    /** What is worn besides a garment worn that way, told and presumed, by the spells in which it is. */
    public List<Dressing> dressings(Wear wear) {
        return wardrobes(wear).dressings();
    }

    /** What is worn besides in one spell, by its number from 0. */
    public Wardrobe wardrobe(Wear wear, int spell) {
        return wardrobes(wear).in(spell);
    }

    private Wardrobes wardrobes(Wear wear) {
        return wardrobes.computeIfAbsent(
                wear, w -> Wardrobes.of(needs.stream().map(SpellNeeds::spell).toList(), w, outfit, beneathClo));
    }

    /** The clothing of each spell with the cloth in it, at its best figures, before wind and walking. */
    public List<Ensemble> ensembles(Cloth completed, Wear wear) {
        Sheets sheets = Sheets.of(completed);
        return wardrobes(wear).each(wardrobe -> Ensemble.of(sheets, wear, wardrobe, End.MIDDLE));
    }

    /**
     * How the cloth does in each spell, in their order.
     *
     * @param completed cloth whose thickness, air permeability and vapour resistance are known or estimated
     */
    public List<SpellComfort> of(Cloth completed, Wear wear) {
        List<ThreeDressed> ensembles = threes(completed, wear);
        return IntStream.range(0, spells.size())
                .mapToObj(i -> in(spells.get(i), ensembles.get(i)))
                .toList();
    }

    /**
     * The same at the best figures only, and of warmth and heat only how much there is of them: much quicker.
     *
     * @param completed as for {@link #of}
     */
    public List<SpellComfort> atBestFigures(Cloth completed, Wear wear) {
        List<Ensemble> clothing = ensembles(completed, wear);
        return IntStream.range(0, spells.size())
                .mapToObj(i -> BestFigures.in(spells.get(i), clothing.get(i)))
                .toList();
    }

    private static SpellComfort in(Physics spell, ThreeDressed ensembles) {
        return new SpellComfort(
                spell.needs(), warmth(spell, ensembles), heat(spell, ensembles), vote(spell, ensembles));
    }

    /** Of a spell only what {@link #of} tells of warmth: much quicker. */
    public List<Warmth> warmth(Cloth completed, Wear wear) {
        List<ThreeDressed> ensembles = threes(completed, wear);
        return IntStream.range(0, spells.size())
                .mapToObj(i -> warmth(spells.get(i), ensembles.get(i)))
                .toList();
    }

    private List<ThreeDressed> threes(Cloth completed, Wear wear) {
        Sheets sheets = Sheets.of(completed);
        return wardrobes(wear).each(wardrobe -> ThreeDressed.of(sheets, wear, wardrobe));
    }

    private static Warmth warmth(Physics spell, ThreeDressed ensembles) {
        SpellNeeds needs = spell.needs();
        Surroundings around = needs.surroundings();
        ThreeWorn dry = ensembles.worn(SpellNeeds.motion(around, around.lowMet()));
        WetWear wet = WetWear.of(spell, dry);
        ThreeWorn worn = wet.worn();
        Optional<OutOfRange> tooWindy = Motion.outside(around.relativeMs());
        Reading resultant = tooWindy.<Reading>map(o -> o).orElseGet(() -> worn.span(Worn::clo));
        return new Warmth(
                resultant,
                less(resultant, needs.neededClo()),
                less(resultant, needs.minimalClo()),
                hours(around, worn),
                wet.loss());
    }

    static Reading less(Reading have, Reading need) {
        if (have instanceof Value value && need instanceof Value needed) {
            double take = needed.value();
            return new Value(value.value() - take, value.low() - take, value.high() - take);
        }
        return need instanceof OutOfRange ? need : have;
    }

    private static Reading hours(Surroundings around, ThreeWorn worn) {
        double metabolic = around.lowMet() * WM2_PER_MET;
        Motion motion = SpellNeeds.motion(around, around.lowMet());
        return worn.spanReadings(clothing ->
                DurationLimit.hours(around.air(), metabolic, motion, ColdCriterion.MINIMAL, clothing.insulationM2KW()));
    }

    private static Reading vote(Physics spell, ThreeDressed ensembles) {
        Surroundings around = spell.needs().surroundings();
        return ensembles
                .worn(SpellNeeds.motion(around, around.meanMet()))
                .spanReadings(clothing -> spell.vote(clothing.clo()));
    }

    private static Heat heat(Physics spell, ThreeDressed ensembles) {
        Surroundings around = spell.needs().surroundings();
        ThreeWorn worn = ensembles.worn(SpellNeeds.motion(around, around.highMet()));
        double ceiling = comfortableWettedness(around.highMet());
        Value resistance = worn.span(clothing -> clothing.vapourResistanceM2KpaW() * 1000);
        Optional<OutOfRange> outside = worn.outside(around);
        if (outside.isPresent()) {
            OutOfRange none = outside.get();
            return new Heat(none, none, ceiling, none, none, none, none, resistance);
        }
        ThreeHours hours = ThreeHours.of(worn, spell);
        return new Heat(
                hours.span(Hour::wettedness),
                hours.span(Hour::asked),
                ceiling,
                hours.span(Hour::wettest),
                hours.span(hour -> hour.state().skinC()),
                hours.span(hour -> hour.state().coreC()),
                hours.span(Hour::standardEffectiveC),
                resistance);
    }

    /** ASHRAE Handbook Fundamentals, from memory. */
    static double comfortableWettedness(double met) {
        return 0.0012 * met * WM2_PER_MET + 0.15;
    }
}
