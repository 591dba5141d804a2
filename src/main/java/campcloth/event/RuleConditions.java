package campcloth.event;

import campcloth.figure.Range;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a rule asks of the clothing and of its wearer. What is empty asks nothing; all that is given must be kept to.
 *
 * @param maxMeltablePercent greatest share of fibre that melts, percent of mass
 * @param forbiddenFibres keys of fibres that may not be in the cloth at all
 * @param allowedFibres keys of the only fibres that may be in the cloth; empty: no such list
 * @param minWeightGsm least mass per area, g/m2
 * @param plainSurfaceOnly whether raised surfaces are forbidden
 * @param closeFitOnly whether loose garments are forbidden
 * @param keepAtLeastM least distance from a fire's centre, m; the wearer's own, whatever the cloth
 * @param requiredTreatment a treatment that the cloth must have had; only a person can judge it
 * @param requiredCertificate a report or mark that must be shown; only a person can judge it
 * @param askAbout anything else that only a person can judge
 */
public record RuleConditions(
        Optional<Double> maxMeltablePercent,
        Set<String> forbiddenFibres,
        Set<String> allowedFibres,
        Optional<Double> minWeightGsm,
        boolean plainSurfaceOnly,
        boolean closeFitOnly,
        Optional<Double> keepAtLeastM,
        Optional<String> requiredTreatment,
        Optional<String> requiredCertificate,
        Optional<String> askAbout) {

    /** Longest text that a person is to judge, characters. */
    public static final int LONGEST_TEXT = 500;

    private static final Range MELTABLE = new Range("maxMeltablePercent", 0, 100, "%");
    private static final Range WEIGHT = new Range("minWeightGsm", 0, 2000, "g/m2");
    private static final Range KEEP = new Range("keepAtLeastM", 0.1, 1000, "m");

    /** Nothing that could be named. */
    public static final RuleConditions NONE = ofCloth(Optional.empty(), Set.of(), Optional.empty(), false);

    public RuleConditions {
        maxMeltablePercent.ifPresent(MELTABLE::check);
        minWeightGsm.ifPresent(WEIGHT::check);
        keepAtLeastM.ifPresent(KEEP::check);
        requiredTreatment.ifPresent(text -> WrittenText.check("requiredTreatment", text, LONGEST_TEXT));
        requiredCertificate.ifPresent(text -> WrittenText.check("requiredCertificate", text, LONGEST_TEXT));
        askAbout.ifPresent(text -> WrittenText.check("askAbout", text, LONGEST_TEXT));
        forbiddenFibres = Collections.unmodifiableSet(new TreeSet<>(forbiddenFibres));
        allowedFibres = Collections.unmodifiableSet(new TreeSet<>(allowedFibres));
    }

    /** The conditions that can be checked on a cloth alone. */
    public static RuleConditions ofCloth(
            Optional<Double> maxMeltablePercent,
            Set<String> forbiddenFibres,
            Optional<Double> minWeightGsm,
            boolean plainSurfaceOnly) {
        return new RuleConditions(
                maxMeltablePercent,
                forbiddenFibres,
                Set.of(),
                minWeightGsm,
                plainSurfaceOnly,
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Whether it asks nothing that could be named. */
    public boolean isEmpty() {
        return equals(NONE);
    }
}
