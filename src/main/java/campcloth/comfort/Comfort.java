package campcloth.comfort;

import static campcloth.comfort.SpellNeeds.WM2_PER_MET;

import campcloth.cloth.Cloth;
import campcloth.cloth.Outfit;
import campcloth.cloth.Wear;
import campcloth.comfort.Reading.OutOfRange;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort.Heat;
import campcloth.comfort.SpellComfort.Warmth;
import campcloth.comfort.model.Body;
import campcloth.comfort.model.ColdCriterion;
import campcloth.comfort.model.DurationLimit;
import campcloth.comfort.model.Motion;
import campcloth.comfort.model.Pmv;
import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.Worn;
import campcloth.event.Place;
import campcloth.event.Spell;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Comfort of any cloth at one event: what the spells ask for is computed once, every cloth is then set against it. Each model
 * is run at the best figures of the cloth and at the two ends of their intervals: thin, open and breathing; thick, tight and
 * close. Immutable; may be shared between threads.
 */
public final class Comfort {

    static final int MINUTES = 60;

    private final List<SpellNeeds> needs;
    private final Optional<Place> place;
    private final double coldestAirC;
    private final Outfit outfit;

    private Comfort(List<SpellNeeds> needs, Optional<Place> place, double coldestAirC, Outfit outfit) {
        this.needs = needs;
        this.place = place;
        this.coldestAirC = coldestAirC;
        this.outfit = outfit;
    }

    /** For the spells of an event whose place is not known, of whose wearer nobody said what else is worn; at least one. */
    public static Comfort in(List<Spell> spells) {
        return in(spells, Optional.empty());
    }

    /** For the spells of an event; there must be one at least. */
    public static Comfort in(List<Spell> spells, Optional<Place> place) {
        return new Comfort(
                spells.stream()
                        .map(spell -> SpellNeeds.of(spell, Surroundings.of(spell, place)))
                        .toList(),
                place,
                spells.stream().mapToDouble(Spell::airC).min().orElseThrow(),
                Outfit.UNTOLD);
    }

    /** The same event for a wearer of that outfit. */
    public Comfort wearing(Outfit other) {
        return new Comfort(needs, place, coldestAirC, other);
    }

    /** The same event for a wearer who works so hard within the range of each activity, 0 to 1, for cold and for heat alike. */
    public Comfort atPace(double share) {
        return new Comfort(
                needs.stream()
                        .map(need ->
                                SpellNeeds.of(need.spell(), need.surroundings().atPace(share)))
                        .toList(),
                place,
                coldestAirC,
                outfit);
    }

    /** What each spell asks for, in their order. */
    public List<SpellNeeds> needs() {
        return needs;
    }

    /** Where it is, where somebody said. */
    public Optional<Place> place() {
        return place;
    }

    /** What is worn besides a garment worn that way: told, and presumed. */
    public Wardrobe wardrobe(Wear wear) {
        return Wardrobe.with(wear, coldestAirC, outfit);
    }

    /** The clothing with the cloth in it, at its best figures, before wind and walking. */
    public Ensemble ensemble(Cloth completed, Wear wear) {
        return Ensemble.of(Sheets.of(completed), wear, wardrobe(wear), End.MIDDLE);
    }

    /**
     * How the cloth does in each spell, in their order.
     *
     * @param completed cloth whose thickness, air permeability and vapour resistance are known or estimated
     */
    public List<SpellComfort> of(Cloth completed, Wear wear) {
        Three ensembles = Three.of(completed, wear, wardrobe(wear));
        return needs.stream().map(need -> in(need, ensembles)).toList();
    }

    /**
     * The same at the best figures only, and of warmth and heat only how much there is of them: much quicker.
     *
     * @param completed as for {@link #of}
     */
    public List<SpellComfort> atBestFigures(Cloth completed, Wear wear) {
        Ensemble clothing = ensemble(completed, wear);
        return needs.stream().map(need -> BestFigures.in(need, clothing)).toList();
    }

    private static SpellComfort in(SpellNeeds needs, Three ensembles) {
        Surroundings around = needs.surroundings();
        return new SpellComfort(
                needs,
                warmth(needs, ensembles),
                heat(around, ensembles.worn(SpellNeeds.motion(around, around.highMet()))),
                vote(around, ensembles));
    }

    /** Of a spell only what {@link #of} tells of warmth: much quicker. */
    public List<Warmth> warmth(Cloth completed, Wear wear) {
        Three ensembles = Three.of(completed, wear, wardrobe(wear));
        return needs.stream().map(need -> warmth(need, ensembles)).toList();
    }

    private static Warmth warmth(SpellNeeds needs, Three ensembles) {
        Surroundings around = needs.surroundings();
        ThreeWorn dry = ensembles.worn(SpellNeeds.motion(around, around.lowMet()));
        WetWear wet = WetWear.of(needs, dry);
        ThreeWorn worn = wet.worn();
        Optional<OutOfRange> tooWindy = Motion.outside(needs.surroundings().relativeMs());
        Reading resultant = tooWindy.<Reading>map(o -> o).orElseGet(() -> worn.span(Worn::clo));
        return new Warmth(
                resultant,
                less(resultant, needs.neededClo()),
                less(resultant, needs.minimalClo()),
                hours(needs.surroundings(), worn),
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

    private static Reading vote(Surroundings around, Three ensembles) {
        double met = (around.lowMet() + around.highMet()) / 2;
        return ensembles
                .worn(SpellNeeds.motion(around, met))
                .spanReadings(clothing -> Pmv.vote(around.air(), met, clothing.clo()));
    }

    private static Heat heat(Surroundings around, ThreeWorn worn) {
        double ceiling = comfortableWettedness(around.highMet());
        Value resistance = worn.span(clothing -> clothing.vapourResistanceM2KpaW() * 1000);
        Optional<OutOfRange> outside = worn.outside(around);
        if (outside.isPresent()) {
            OutOfRange none = outside.get();
            return new Heat(none, none, ceiling, none, none, none, none, resistance);
        }
        Run open = Run.of(around, worn.open());
        Run middle = Run.of(around, worn.middle());
        Run close = Run.of(around, worn.close());
        return new Heat(
                span(open, middle, close, run -> run.body.wettedness()),
                span(open, middle, close, run -> run.body.wettednessAsked()),
                ceiling,
                span(open, middle, close, run -> run.model.wettest()),
                span(open, middle, close, run -> run.body.skinC()),
                span(open, middle, close, run -> run.body.coreC()),
                span(open, middle, close, run -> run.model.standardEffectiveC(run.body)),
                resistance);
    }

    /** ASHRAE Handbook Fundamentals, from memory. */
    static double comfortableWettedness(double met) {
        return 0.0012 * met * WM2_PER_MET + 0.15;
    }

    private static Value span(Run open, Run middle, Run close, ToDoubleFunction<Run> reading) {
        return Value.spanning(reading.applyAsDouble(middle), reading.applyAsDouble(open), reading.applyAsDouble(close));
    }

    /** The two-node model run for an hour. */
    private record Run(TwoNode model, Body body) {

        static Run of(Surroundings around, Worn worn) {
            TwoNode model = new TwoNode(around.air(), around.highMet(), worn, around.seated());
            return new Run(model, model.after(MINUTES));
        }
    }

    /** The clothing at both ends of the cloth's intervals and at its best figures. */
    private record Three(Ensemble open, Ensemble middle, Ensemble close) {

        static Three of(Cloth cloth, Wear wear, Wardrobe wardrobe) {
            Sheets sheets = Sheets.of(cloth);
            return new Three(
                    Ensemble.of(sheets, wear, wardrobe, End.OPEN),
                    Ensemble.of(sheets, wear, wardrobe, End.MIDDLE),
                    Ensemble.of(sheets, wear, wardrobe, End.CLOSE));
        }

        ThreeWorn worn(Motion motion) {
            return new ThreeWorn(open.worn(motion), middle.worn(motion), close.worn(motion));
        }
    }
}
