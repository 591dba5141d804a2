package campcloth.pages.plan;

import campcloth.fire.FireCautions;
import java.util.List;
import java.util.Set;

/**
 * What to heed whichever cloth is chosen, in two parts, so that what is said of this event is not lost among what always holds.
 *
 * @param here what this event, its weather and its rules ask
 * @param always what holds at every fire, first aid among it
 */
public record Heeding(List<String> here, List<String> always) {

    private static final Set<String> ALWAYS = Set.of(
            FireCautions.NO_TEST,
            FireCautions.AT_THE_FIRE,
            FireCautions.FUEL_ON_CLOTH,
            FireCautions.THREAD_AND_TRIMS,
            FireCautions.FIRST_AID,
            FireCautions.MEDICAL_HELP,
            FireCautions.LABEL_TOLERANCE,
            FireCautions.OUTSIDE);

    static Heeding of(List<String> cautions) {
        return new Heeding(
                cautions.stream().filter(caution -> !ALWAYS.contains(caution)).toList(),
                cautions.stream().filter(ALWAYS::contains).toList());
    }
}
