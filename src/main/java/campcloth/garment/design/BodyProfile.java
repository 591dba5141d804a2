package campcloth.garment.design;

import campcloth.garment.Measurement;
import campcloth.garment.Option;
import java.util.List;

/**
 * What one design of the upper body with sleeves takes as usual, and what it lets choose.
 *
 * @param design key of the design
 * @param fit how it fits at its usual ease, in words
 * @param usualRoundCm finished circumference reckoned with where nobody was measured
 * @param easeCm usual ease over the chest
 * @param leastEaseCm ease without which it does not go on
 * @param length shoulder to hem
 * @param sleeve sleeve's length
 * @param sleeveTop sleeve's width at the shoulder
 * @param cuff sleeve's width at its end
 * @param options what can be chosen
 */
record BodyProfile(
        String design,
        String fit,
        double usualRoundCm,
        double easeCm,
        double leastEaseCm,
        Measurement length,
        Measurement sleeve,
        Measurement sleeveTop,
        Measurement cuff,
        List<Option> options) {

    BodyProfile {
        options = List.copyOf(options);
    }

    List<Measurement> measurements() {
        return List.of(
                UpperBody.FINISHED_CHEST,
                UpperBody.CHEST,
                length,
                sleeve,
                sleeveTop,
                cuff,
                UpperBody.NECK,
                UpperBody.HEAD);
    }
}
