package campcloth.comfort;

import campcloth.comfort.Moment.Felt;
import campcloth.comfort.Reading.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The course of an event in certain clothing.
 *
 * @param needs what each spell asks for, in their order
 * @param moments its minutes, in their order
 */
public record Course(List<SpellNeeds> needs, List<Moment> moments) {

    /** What it leaves out, a sentence each. */
    public static final List<String> LEFT_OUT = List.of(
            "Clothes told damp or wet insulate less in the cold for as long as that spell lasts and no longer: neither soaking nor"
                    + " drying out is followed. Sweat that stays in them is, and the chill when it dries, but not the insulation"
                    + " it takes.",
            "Layers are put on and off between spells only, as told or as presumed of each spell's cold; the sweat in the clothing goes"
                    + " on as though it were all in what stays on.",
            "The body model is made for an hour in a room and an average adult: outdoors and for many hours it is an"
                    + " approximation.");

    public Course {
        needs = List.copyOf(needs);
        moments = List.copyOf(moments);
    }

    /**
     * One spell of it.
     *
     * @param needs what it asks for
     * @param hoursTooCold hours too cold in it
     * @param hoursTooWarm hours too warm in it
     * @param coldestSkinC coldest the skin becomes
     * @param wettest largest share of the skin that is wet
     * @param waterAtEndGM2 sweat in the clothing at its end, g per m2 of the body
     * @param notComputed why the body is not followed; empty where it is
     */
    public record InSpell(
            SpellNeeds needs,
            double hoursTooCold,
            double hoursTooWarm,
            OptionalDouble coldestSkinC,
            OptionalDouble wettest,
            OptionalDouble waterAtEndGM2,
            Optional<String> notComputed) {}

    /**
     * The whole of it in short.
     *
     * @param hours how long it is
     * @param hoursTooCold hours too cold for one who works little
     * @param hoursTooWarm hours too warm for one who works much
     * @param hoursComfortable hours neither
     * @param hoursNotComputed hours of which nothing can be said
     * @param coldest the coldest quarter-hour
     * @param warmest the quarter-hour most beyond comfort with sweat
     */
    public record Summary(
            double hours,
            double hoursTooCold,
            double hoursTooWarm,
            double hoursComfortable,
            double hoursNotComputed,
            Optional<QuarterHour> coldest,
            Optional<QuarterHour> warmest) {}

    public Summary summary() {
        return new Summary(
                hours(), hoursTooCold(), hoursTooWarm(), hoursInComfort(), hoursNotComputed(), coldest(), warmest());
    }

    public double hours() {
        return moments.size() / 60.0;
    }

    public double hoursTooCold() {
        return hours(Moment::tooCold);
    }

    public double hoursTooWarm() {
        return hours(Moment::tooWarm);
    }

    /** Hours of which neither cold nor heat could be judged. */
    public double hoursNotComputed() {
        return hours(moment -> !moment.coldJudged());
    }

    /** Hours of which cold is judged by insulation alone, and heat not at all. */
    public double hoursByInsulationAlone() {
        return hours(moment -> moment.coldJudged() && moment.felt().isEmpty());
    }

    /** Hours judged by the body and neither too cold nor too warm, or by insulation alone and enough of it. */
    public double hoursInComfort() {
        return hours(moment -> moment.coldJudged() && !moment.tooCold() && !moment.tooWarm());
    }

    /** Whether the wearer comes to where nobody goes on. */
    public boolean beyondBearing() {
        return felt().anyMatch(Felt::beyondBearing);
    }

    /** Insulation to spare, clo, on the mean of the minutes for which it is known. */
    public OptionalDouble meanMarginClo() {
        return mean(m -> m.dressed().marginClo().inRange().map(Value::value));
    }

    public OptionalDouble meanSkinC() {
        return mean(m -> m.felt().map(Felt::skinC));
    }

    public OptionalDouble meanWettedness() {
        return mean(m -> m.felt().map(Felt::wettedness));
    }

    /** The coldest quarter-hour: where insulation alone is too little in the deepest cold, that one. */
    public Optional<QuarterHour> coldest() {
        Optional<QuarterHour> byInsulation = QuarterHour.worst(moments, QuarterHour.Measure.INSULATION);
        Optional<QuarterHour> bySkin = QuarterHour.worst(moments, QuarterHour.Measure.SKIN);
        return byInsulation.filter(q -> q.beyond() > 0).or(() -> bySkin).or(() -> byInsulation);
    }

    /** The quarter-hour wettest with sweat, measured by what is comfortable at that work. */
    public Optional<QuarterHour> warmest() {
        return QuarterHour.worst(moments, QuarterHour.Measure.WETTEDNESS);
    }

    /** Spell by spell. */
    public List<InSpell> spells() {
        return parts().stream().map(Course::whole).toList();
    }

    /** Each spell's course by itself; minutes are still counted from the begin of the event. */
    List<Course> parts() {
        List<Course> parts = new ArrayList<>();
        for (int i = 0; i < needs.size(); i++) {
            int number = i;
            parts.add(new Course(
                    List.of(needs.get(i)),
                    moments.stream()
                            .filter(m -> m.dressed().stretch().spell() == number)
                            .toList()));
        }
        return parts;
    }

    private InSpell whole() {
        Optional<Moment> last = moments.isEmpty() ? Optional.empty() : Optional.of(moments.get(moments.size() - 1));
        return new InSpell(
                needs.get(0),
                hoursTooCold(),
                hoursTooWarm(),
                felt().mapToDouble(Felt::skinC).min(),
                felt().mapToDouble(Felt::wettedness).max(),
                last.flatMap(Moment::felt).stream().mapToDouble(Felt::waterGM2).findFirst(),
                last.flatMap(m -> m.dressed().notComputed()));
    }

    private Stream<Felt> felt() {
        return moments.stream().flatMap(m -> m.felt().stream());
    }

    private double hours(Predicate<Moment> which) {
        return moments.stream().filter(which).count() / 60.0;
    }

    private OptionalDouble mean(Function<Moment, Optional<Double>> reading) {
        return moments.stream()
                .flatMap(m -> reading.apply(m).stream())
                .mapToDouble(Double::doubleValue)
                .average();
    }
}
