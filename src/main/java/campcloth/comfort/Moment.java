package campcloth.comfort;

import campcloth.comfort.Reading.Value;
import java.util.Optional;

/**
 * A minute of an event in certain clothing.
 *
 * @param minute minutes since the begin of the event, at its end
 * @param dressed the clothing then
 * @param felt how the wearer is; empty where the two-node model does not hold
 */
public record Moment(int minute, Dressed dressed, Optional<Felt> felt) {

    /**
     * The clothing in a stretch of the event.
     *
     * @param stretch the stretch
     * @param givenClo insulation that wind and walking leave
     * @param marginClo that less the needed one
     * @param minimalMarginClo that less the minimal one, where ISO 11079 holds
     * @param notComputed why the wearer is not followed there; empty where he is
     */
    public record Dressed(
            Stretch stretch,
            Reading givenClo,
            Reading marginClo,
            Reading minimalMarginClo,
            Optional<String> notComputed) {}

    /**
     * How the wearer is: cold judged at the lower metabolic rate of the activity, heat at the higher one.
     *
     * @param skinC mean skin temperature of the one who works little
     * @param coldSkinC skin temperature below which it is too cold: the minimal criterion of ISO 11079, "cold, but in balance"
     * @param coreLowC core temperature of the one who works little
     * @param wettedness share of the skin that is wet with sweating on the one who works much
     * @param wetness that share with the wet clothing in it
     * @param comfortableWettedness share up to which it is comfortable
     * @param coreHighC core temperature of the one who works much
     * @param waterGM2 sweat in the clothing, g per m2 of the body
     */
    public record Felt(
            double skinC,
            double coldSkinC,
            double coreLowC,
            double wettedness,
            double wetness,
            double comfortableWettedness,
            double coreHighC,
            double waterGM2) {

        /** A minute carries the core no further than that. */
        private static final double EDGE_K = 0.2;

        /** Whether nobody would go on so: the model stands still there. */
        public boolean beyondBearing() {
            return coreHighC >= Wearer.HOTTEST_CORE_C - EDGE_K || coreLowC <= Wearer.COLDEST_CORE_C + EDGE_K;
        }
    }

    /** Whether anything can be said of cold. */
    public boolean coldJudged() {
        return felt.isPresent() || dressed.minimalMarginClo.inRange().isPresent();
    }

    /** Too cold by the skin; where the body is not followed, by an insulation under the minimal one. */
    public boolean tooCold() {
        return felt.map(f -> f.skinC < f.coldSkinC)
                .orElse(dressed.minimalMarginClo.inRange().map(Value::value).orElse(0.0) < 0);
    }

    /** Wetter with sweating than is comfortable; wet clothing alone is no heat. */
    public boolean tooWarm() {
        return felt.filter(f -> f.wettedness > f.comfortableWettedness).isPresent();
    }

    public Feeling feeling() {
        return Feeling.of(this);
    }
}
