package campcloth.store;

import campcloth.event.FireRole;
import campcloth.event.Provenance;
import campcloth.event.RuleConditions;
import campcloth.event.RuleReach;
import campcloth.event.SafetyRule;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.deser.std.StdConvertingDeserializer;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdDelegatingSerializer;
import tools.jackson.databind.util.StdConverter;

/** A rule as it is kept: flat, as rules were before they had groups. What older rows lack is null, and asks nothing. */
record StoredRule(
        SafetyRule.Authority authority,
        String statement,
        @Nullable Double maxMeltablePercent,
        @Nullable List<String> forbiddenFibres,
        @Nullable List<String> allowedFibres,
        @Nullable Double minWeightGsm,
        @Nullable Boolean plainSurfaceOnly,
        @Nullable Boolean closeFitOnly,
        @Nullable Double keepAtLeastM,
        @Nullable String requiredTreatment,
        @Nullable String requiredCertificate,
        @Nullable String askAbout,
        @Nullable Double withinM,
        @Nullable List<FireRole> roles,
        @Nullable String source,
        @Nullable LocalDate issuedOn,
        @Nullable String edition,
        @Nullable LocalDate validFrom,
        @Nullable LocalDate validUntil) {

    static StoredRule of(SafetyRule rule) {
        RuleConditions asked = rule.conditions();
        Provenance from = rule.provenance();
        return new StoredRule(
                rule.authority(),
                rule.statement(),
                asked.maxMeltablePercent().orElse(null),
                asked.forbiddenFibres().stream().sorted().toList(),
                asked.allowedFibres().stream().sorted().toList(),
                asked.minWeightGsm().orElse(null),
                asked.plainSurfaceOnly(),
                asked.closeFitOnly(),
                asked.keepAtLeastM().orElse(null),
                asked.requiredTreatment().orElse(null),
                asked.requiredCertificate().orElse(null),
                asked.askAbout().orElse(null),
                rule.reach().withinM().orElse(null),
                rule.reach().roles().stream().sorted().toList(),
                from.source().orElse(null),
                from.issuedOn().orElse(null),
                from.edition().orElse(null),
                from.validFrom().orElse(null),
                from.validUntil().orElse(null));
    }

    SafetyRule rule() {
        RuleConditions asked = new RuleConditions(
                Optional.ofNullable(maxMeltablePercent),
                set(forbiddenFibres),
                set(allowedFibres),
                Optional.ofNullable(minWeightGsm),
                Boolean.TRUE.equals(plainSurfaceOnly),
                Boolean.TRUE.equals(closeFitOnly),
                Optional.ofNullable(keepAtLeastM),
                Optional.ofNullable(requiredTreatment),
                Optional.ofNullable(requiredCertificate),
                Optional.ofNullable(askAbout));
        Provenance from = new Provenance(
                Optional.ofNullable(source),
                Optional.ofNullable(issuedOn),
                Optional.ofNullable(edition),
                Optional.ofNullable(validFrom),
                Optional.ofNullable(validUntil));
        return new SafetyRule(
                authority, statement, asked, new RuleReach(Optional.ofNullable(withinM), set(roles)), from);
    }

    /** Has rules written and read in this form wherever they stand. */
    static SimpleModule module() {
        return new SimpleModule("rules")
                .addSerializer(new StdDelegatingSerializer(SafetyRule.class, new Writing()))
                .addDeserializer(SafetyRule.class, new StdConvertingDeserializer<>(new Reading()));
    }

    private static <T> Set<T> set(@Nullable List<T> items) {
        return items == null ? Set.of() : Set.copyOf(items);
    }

    private static final class Writing extends StdConverter<SafetyRule, StoredRule> {
        @Override
        public StoredRule convert(SafetyRule rule) {
            return of(rule);
        }
    }

    private static final class Reading extends StdConverter<StoredRule, SafetyRule> {
        @Override
        public SafetyRule convert(StoredRule stored) {
            return stored.rule();
        }
    }
}
