package campcloth.pages.events;

import campcloth.event.FireRole;
import campcloth.event.Provenance;
import campcloth.event.RuleConditions;
import campcloth.event.RuleReach;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.fibre.Fibres;
import campcloth.figure.DayText;
import campcloth.figure.Refused;
import campcloth.fire.RuleFibres;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One rule as it is typed. A rule that is gone keeps its number until all numbers typed can be read. */
public final class RuleForm {

    private static final Pattern BETWEEN_FIBRES = Pattern.compile("[,;]");

    public boolean gone;
    public @Nullable Authority authority;
    public @Nullable String statement;
    public @Nullable Double maxMeltablePercent;
    public @Nullable String forbiddenFibres;
    public @Nullable String allowedFibres;

    @TypedIn(Units.Measure.WEIGHT_GSM)
    public @Nullable Double minWeightGsm;

    public boolean plainSurfaceOnly;
    public boolean closeFitOnly;

    @TypedIn(Units.Measure.DISTANCE_M)
    public @Nullable Double keepAtLeastM;

    public @Nullable String requiredTreatment;
    public @Nullable String requiredCertificate;
    public @Nullable String askAbout;

    @TypedIn(Units.Measure.DISTANCE_M)
    public @Nullable Double withinM;

    public List<FireRole> roles = new ArrayList<>();
    public @Nullable String source;
    public @Nullable String issuedOn;
    public @Nullable String edition;
    public @Nullable String validFrom;
    public @Nullable String validUntil;

    static RuleForm of(SafetyRule rule) {
        RuleForm form = new RuleForm();
        form.authority = rule.authority();
        form.statement = rule.statement();
        form.take(rule.conditions());
        form.withinM = rule.reach().withinM().orElse(null);
        form.roles = new ArrayList<>(rule.reach().roles());
        form.take(rule.provenance());
        return form;
    }

    private void take(RuleConditions asked) {
        maxMeltablePercent = asked.maxMeltablePercent().orElse(null);
        forbiddenFibres = written(asked.forbiddenFibres());
        allowedFibres = written(asked.allowedFibres());
        minWeightGsm = asked.minWeightGsm().orElse(null);
        plainSurfaceOnly = asked.plainSurfaceOnly();
        closeFitOnly = asked.closeFitOnly();
        keepAtLeastM = asked.keepAtLeastM().orElse(null);
        requiredTreatment = asked.requiredTreatment().orElse(null);
        requiredCertificate = asked.requiredCertificate().orElse(null);
        askAbout = asked.askAbout().orElse(null);
    }

    private void take(Provenance from) {
        source = from.source().orElse(null);
        issuedOn = from.issuedOn().map(LocalDate::toString).orElse(null);
        edition = from.edition().orElse(null);
        validFrom = from.validFrom().map(LocalDate::toString).orElse(null);
        validUntil = from.validUntil().map(LocalDate::toString).orElse(null);
    }

    /** Whether anything is told beyond whose rule it is, its words and its place on paper. */
    public boolean hasConditions() {
        return Stream.of(
                                maxMeltablePercent,
                                forbiddenFibres,
                                allowedFibres,
                                minWeightGsm,
                                keepAtLeastM,
                                requiredTreatment,
                                requiredCertificate,
                                askAbout,
                                withinM)
                        .anyMatch(told -> told != null)
                || plainSurfaceOnly
                || closeFitOnly
                || !roles.isEmpty();
    }

    SafetyRule rule(Fibres fibres) {
        if (authority == null) {
            throw Refused.of("authority", "is missing", "say whose rule it is");
        }
        return new SafetyRule(
                authority,
                statement == null ? "" : statement,
                conditions(fibres),
                new RuleReach(Optional.ofNullable(withinM), Set.copyOf(roles)),
                new Provenance(
                        Optional.ofNullable(source),
                        DayText.day("issuedOn", Optional.ofNullable(issuedOn)),
                        Optional.ofNullable(edition),
                        DayText.day("validFrom", Optional.ofNullable(validFrom)),
                        DayText.day("validUntil", Optional.ofNullable(validUntil))));
    }

    private RuleConditions conditions(Fibres fibres) {
        return new RuleConditions(
                Optional.ofNullable(maxMeltablePercent),
                RuleFibres.forbidden(names(forbiddenFibres), fibres),
                RuleFibres.allowed(names(allowedFibres), fibres),
                Optional.ofNullable(minWeightGsm),
                plainSurfaceOnly,
                closeFitOnly,
                Optional.ofNullable(keepAtLeastM),
                Optional.ofNullable(requiredTreatment),
                Optional.ofNullable(requiredCertificate),
                Optional.ofNullable(askAbout));
    }

    private static List<String> names(@Nullable String written) {
        return written == null
                ? List.of()
                : BETWEEN_FIBRES
                        .splitAsStream(written)
                        .filter(name -> !name.isBlank())
                        .toList();
    }

    private static @Nullable String written(Set<String> keys) {
        return keys.isEmpty() ? null : String.join(", ", keys);
    }
}
