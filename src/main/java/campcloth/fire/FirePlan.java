package campcloth.fire;

import campcloth.event.FireKind;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.figure.Words;
import campcloth.fire.FireRing.Kind;
import campcloth.fire.model.PointSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The distances around one fire: where flames can reach, where sparks land, where the wearer is, what a cloth asks for, what
 * rules ask for. Estimates for a steady fire and what others have told; none is a border of danger.
 *
 * @param spells names of the spells at this fire; empty where it is drawn for whoever lays out the place
 * @param exposure the fire and the wearer's place at it
 * @param cloth the distance that the cloth asks for; empty without a cloth
 * @param rings the distances
 */
public record FirePlan(List<String> spells, Exposure exposure, Optional<StandBack> cloth, List<FireRing> rings) {

    private static final String GUSTS =
            "Estimates for a steady fire: a gust, a flare-up or an ember reaches farther. Rules and the fire marshal decide.";

    public FirePlan {
        spells = List.copyOf(spells);
        rings = List.copyOf(rings);
    }

    /** For whoever lays out the place: no cloth, the rules for all. */
    public static FirePlan of(OpenFire fire, List<SafetyRule> rules) {
        Exposure exposure = Exposure.of(fire);
        List<FireRing> rings = new ArrayList<>(List.of(flames(exposure), ring(), sparks()));
        rings.addAll(ruleRings(rules));
        return new FirePlan(List.of(), exposure, Optional.empty(), rings);
    }

    /** For each fire of an event at which a cloth was judged, one; fires that ask the same are one. */
    public static List<FirePlan> all(FireJudgement judgement, List<SafetyRule> rules) {
        Map<List<Object>, List<String>> spells = new LinkedHashMap<>();
        IntStream.range(0, judgement.spells().size()).forEach(i -> {
            SpellHazard spell = judgement.spells().get(i);
            spells.computeIfAbsent(List.of(spell.exposure(), greatest(judgement, i)), same -> new ArrayList<>())
                    .add(spell.spell());
        });
        return spells.entrySet().stream()
                .map(e -> of(
                        e.getValue(),
                        (Exposure) e.getKey().get(0),
                        (StandBack) e.getKey().get(1),
                        rules))
                .toList();
    }

    /** Of the garment's own cloth and of what is sewn into it. */
    private static StandBack greatest(FireJudgement judgement, int spell) {
        StandBack own = judgement.spells().get(spell).hazard().standBack();
        return judgement.parts().stream()
                .map(part -> part.judgement().spells().get(spell).hazard().standBack())
                .filter(part -> part.metres() > own.metres())
                .max(Comparator.comparingDouble(StandBack::metres))
                .orElse(own);
    }

    private static FirePlan of(List<String> spells, Exposure exposure, StandBack cloth, List<SafetyRule> rules) {
        List<FireRing> rings = new ArrayList<>(List.of(flames(exposure), sparks()));
        wearer(exposure).ifPresent(rings::add);
        double metres = cloth.roundedUpM();
        rings.add(new FireRing(
                Kind.CLOTH,
                metres,
                "least distance for this cloth, an estimate",
                "The cloth asks for " + Words.fixed(metres, 1) + " m or more. " + cloth.because()));
        rings.addAll(ruleRings(rules.stream()
                .filter(rule -> rule.reach().concerns(exposure.role()))
                .toList()));
        return new FirePlan(spells, exposure, Optional.of(cloth), rings);
    }

    private static FireRing flames(Exposure exposure) {
        double metres = StandBack.upToTenths(PointSource.nearFieldM(exposure.fireKwOrPresumed()));
        String shown = Words.fixed(metres, 1) + " m";
        return new FireRing(
                Kind.FLAMES,
                metres,
                "nearer than this flames can reach",
                "Nearer than " + shown + " flames can reach; no formula tells how far (project's estimate).");
    }

    private static FireRing ring() {
        return new FireRing(
                Kind.RING,
                Exposure.RING_M,
                "nearer only who works at the fire",
                "Nearer than " + Words.number(Exposure.RING_M)
                        + " m only those who work at the fire (3 ft in a youth organisation's fire sheet).");
    }

    private static FireRing sparks() {
        return new FireRing(
                Kind.SPARKS,
                StandBack.SPARKS_M,
                "nearer than this sparks land often",
                "Nearer than " + Words.number(StandBack.SPARKS_M)
                        + " m sparks land often (from memory; project choice). Some fly farther.");
    }

    private static Optional<FireRing> wearer(Exposure exposure) {
        if (exposure.distanceM().isEmpty() && Exposure.handsAtTheFire(exposure.role())) {
            return Optional.empty();
        }
        String metres = Words.number(exposure.distanceOrPresumedM()) + " m";
        return Optional.of(
                exposure.distanceM().isPresent()
                        ? new FireRing(
                                Kind.WEARER,
                                exposure.distanceOrPresumedM(),
                                "the wearer, as told",
                                "The wearer is " + metres + " away, as told.")
                        : new FireRing(
                                Kind.WEARER,
                                exposure.distanceOrPresumedM(),
                                "the wearer, presumed so near",
                                "Nobody told how far away the wearer is: judged as " + metres + "."));
    }

    private static List<FireRing> ruleRings(List<SafetyRule> rules) {
        List<FireRing> rings = new ArrayList<>();
        for (SafetyRule rule : rules) {
            String whose = "rule of the " + FireCautions.words(rule.authority());
            rule.conditions()
                    .keepAtLeastM()
                    .ifPresent(m -> rings.add(new FireRing(
                            Kind.RULE_KEEP,
                            m,
                            "to be kept: " + whose,
                            RuleWords.quoted(rule) + ": " + Words.number(m) + " m to be kept.")));
            rule.reach()
                    .withinM()
                    .ifPresent(m -> rings.add(new FireRing(
                            Kind.RULE_REACH,
                            m,
                            "within it holds a " + whose,
                            RuleWords.quoted(rule) + ": holds within " + Words.number(m) + " m of a fire.")));
        }
        rings.sort(Comparator.comparing(FireRing::kind).thenComparingDouble(FireRing::metres));
        return rings;
    }

    /** The fire in a few words. */
    public String fire() {
        String name = exposure.kind().map(FireKind::words).orElse("a fire");
        String heat = Words.number(exposure.fireKwOrPresumed()) + " kW";
        String size = exposure.fireKw().isPresent()
                ? "of " + heat + " as told"
                : exposure.kind().isPresent() ? "counted as " + heat : "of untold size, counted as " + heat;
        return name + " " + size;
    }

    /** What follows for the wearer, then what the distances are; one sentence or a few each. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (cloth.isPresent() && Exposure.handsAtTheFire(exposure.role())) {
            notes.add("Hands and sleeves come to the flame there: the distances do not help them.");
        }
        exposure.distanceM()
                .filter(told -> cloth.isPresent())
                .ifPresent(wearer -> rings.stream()
                        .filter(ring -> ring.kind() == Kind.CLOTH || ring.kind() == Kind.RULE_KEEP)
                        .filter(ring -> isNearer(wearer, ring))
                        .map(ring -> "The wearer is nearer than "
                                + (ring.kind() == Kind.CLOTH
                                        ? "the least distance for this cloth."
                                        : "the " + Words.number(ring.metres()) + " m that a rule asks for."))
                        .distinct()
                        .forEach(notes::add));
        notes.add(GUSTS);
        return notes;
    }

    private boolean isNearer(double wearerM, FireRing ring) {
        return wearerM < (ring.kind() == Kind.CLOTH ? cloth.orElseThrow().metres() : ring.metres());
    }
}
