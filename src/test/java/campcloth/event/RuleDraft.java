package campcloth.event;

import campcloth.event.SafetyRule.Authority;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/** A rule in the making: asks nothing until something is added. */
public record RuleDraft(Authority authority, String statement, RuleConditions asked, RuleReach reach, Provenance from) {

    public static RuleDraft of(Authority authority, String statement) {
        return new RuleDraft(authority, statement, RuleConditions.NONE, RuleReach.EVERYWHERE, Provenance.UNTOLD);
    }

    public static RuleDraft of(SafetyRule rule) {
        return new RuleDraft(rule.authority(), rule.statement(), rule.conditions(), rule.reach(), rule.provenance());
    }

    public SafetyRule rule() {
        return new SafetyRule(authority, statement, asked, reach, from);
    }

    public RuleDraft mostMeltable(double percent) {
        return asking(Optional.of(percent), asked.forbiddenFibres(), asked.allowedFibres(), asked.minWeightGsm());
    }

    public RuleDraft forbidding(Set<String> fibres) {
        return asking(asked.maxMeltablePercent(), fibres, asked.allowedFibres(), asked.minWeightGsm());
    }

    public RuleDraft allowingOnly(Set<String> fibres) {
        return asking(asked.maxMeltablePercent(), asked.forbiddenFibres(), fibres, asked.minWeightGsm());
    }

    public RuleDraft leastWeight(double gsm) {
        return asking(asked.maxMeltablePercent(), asked.forbiddenFibres(), asked.allowedFibres(), Optional.of(gsm));
    }

    public RuleDraft plainSurface() {
        return worn(true, asked.closeFitOnly(), asked.keepAtLeastM());
    }

    public RuleDraft closeFit() {
        return worn(asked.plainSurfaceOnly(), true, asked.keepAtLeastM());
    }

    public RuleDraft keepAtLeast(double metres) {
        return worn(asked.plainSurfaceOnly(), asked.closeFitOnly(), Optional.of(metres));
    }

    public RuleDraft treatment(String text) {
        return judged(Optional.of(text), asked.requiredCertificate(), asked.askAbout());
    }

    public RuleDraft certificate(String text) {
        return judged(asked.requiredTreatment(), Optional.of(text), asked.askAbout());
    }

    public RuleDraft askAbout(String text) {
        return judged(asked.requiredTreatment(), asked.requiredCertificate(), Optional.of(text));
    }

    public RuleDraft within(Optional<Double> metres) {
        return new RuleDraft(authority, statement, asked, new RuleReach(metres, reach.roles()), from);
    }

    public RuleDraft roles(Set<FireRole> roles) {
        return new RuleDraft(authority, statement, asked, new RuleReach(reach.withinM(), roles), from);
    }

    public RuleDraft from(Provenance other) {
        return new RuleDraft(authority, statement, asked, reach, other);
    }

    public RuleDraft from(String source, String edition, String issuedOn) {
        return from(new Provenance(
                Optional.of(source),
                Optional.of(LocalDate.parse(issuedOn)),
                Optional.of(edition),
                from.validFrom(),
                from.validUntil()));
    }

    public RuleDraft term(Optional<LocalDate> validFrom, Optional<LocalDate> validUntil) {
        return from(new Provenance(from.source(), from.issuedOn(), from.edition(), validFrom, validUntil));
    }

    private RuleDraft asking(
            Optional<Double> mostMeltable, Set<String> forbidden, Set<String> allowed, Optional<Double> leastGsm) {
        return asking(new RuleConditions(
                mostMeltable,
                forbidden,
                allowed,
                leastGsm,
                asked.plainSurfaceOnly(),
                asked.closeFitOnly(),
                asked.keepAtLeastM(),
                asked.requiredTreatment(),
                asked.requiredCertificate(),
                asked.askAbout()));
    }

    private RuleDraft worn(boolean plain, boolean close, Optional<Double> keepM) {
        return asking(new RuleConditions(
                asked.maxMeltablePercent(),
                asked.forbiddenFibres(),
                asked.allowedFibres(),
                asked.minWeightGsm(),
                plain,
                close,
                keepM,
                asked.requiredTreatment(),
                asked.requiredCertificate(),
                asked.askAbout()));
    }

    private RuleDraft judged(Optional<String> treatment, Optional<String> certificate, Optional<String> about) {
        return asking(new RuleConditions(
                asked.maxMeltablePercent(),
                asked.forbiddenFibres(),
                asked.allowedFibres(),
                asked.minWeightGsm(),
                asked.plainSurfaceOnly(),
                asked.closeFitOnly(),
                asked.keepAtLeastM(),
                treatment,
                certificate,
                about));
    }

    private RuleDraft asking(RuleConditions conditions) {
        return new RuleDraft(authority, statement, conditions, reach, from);
    }
}
