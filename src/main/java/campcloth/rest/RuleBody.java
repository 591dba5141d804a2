package campcloth.rest;

import campcloth.event.FireRole;
import campcloth.event.Provenance;
import campcloth.event.RuleConditions;
import campcloth.event.RuleReach;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.fibre.Fibres;
import campcloth.figure.DayText;
import campcloth.fire.RuleFibres;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A rule as it is sent and served. */
@Schema(
        name = "Rule",
        description =
                "A rule about clothing. What it leaves out does not restrict, all it holds must be kept to; with nothing to"
                        + " check it is only shown to ask about. It can only tighten, whatever its dates.")
record RuleBody(
        @NotNull Authority authority,

        @Schema(example = "No more than a third synthetic within three metres of open fire")
        @NotNull
        @Size(min = 1, max = 1000)
        String statement,

        @Schema(example = "33") @Nullable Double maxMeltablePercent,
        @Nullable @Size(max = 60) List<@NotNull String> forbiddenFibres,

        @Schema(description = "only these may be in the cloth; no such list where it is left out or empty")
        @Nullable
        @Size(max = 60)
        List<@NotNull String> allowedFibres,

        @Nullable Double minWeightGsm,
        @Nullable Boolean plainSurfaceOnly,

        @Schema(description = "whether loose garments are forbidden") @Nullable
        Boolean closeFitOnly,

        @Schema(description = "distance from a fire that the wearer must keep, whatever the cloth") @Nullable
        Double keepAtLeastM,

        @Schema(description = "a treatment that is asked for; only a person can judge it") @Nullable
        String requiredTreatment,

        @Schema(description = "a report or mark that is asked for; only a person can judge it") @Nullable
        String requiredCertificate,

        @Schema(description = "anything else that only a person can judge") @Nullable
        String askAbout,

        @Schema(example = "3.0", description = "distance from a fire within which it holds; everywhere if left out")
        @Nullable
        Double withinM,

        @Schema(description = "what a wearer does at a fire for it to hold; for everybody if left out or empty")
        @Nullable
        @Size(max = 10)
        List<@NotNull FireRole> roles,

        @Schema(description = "where it can be read, at most 500 characters") @Nullable
        String source,

        @Schema(format = "date", description = "day it was issued") @Nullable
        String issuedOn,

        @Schema(description = "which edition it is taken from") @Nullable
        String edition,

        @Schema(format = "date", description = "first day of its term; a term never makes it milder") @Nullable
        String validFrom,

        @Schema(format = "date", description = "last day of its term; a term never makes it milder") @Nullable
        String validUntil) {

    static RuleBody of(SafetyRule rule) {
        RuleConditions asked = rule.conditions();
        Provenance from = rule.provenance();
        return new RuleBody(
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
                from.issuedOn().map(LocalDate::toString).orElse(null),
                from.edition().orElse(null),
                from.validFrom().map(LocalDate::toString).orElse(null),
                from.validUntil().map(LocalDate::toString).orElse(null));
    }

    /** The rules of a list that may be left out. */
    static List<SafetyRule> rules(@Nullable List<RuleBody> bodies, Fibres fibres) {
        return bodies == null
                ? List.of()
                : EventBody.each("rules", bodies.size(), i -> bodies.get(i).rule(fibres));
    }

    SafetyRule rule(Fibres fibres) {
        RuleConditions asked = new RuleConditions(
                Optional.ofNullable(maxMeltablePercent),
                RuleFibres.forbidden(told(forbiddenFibres), fibres),
                RuleFibres.allowed(told(allowedFibres), fibres),
                Optional.ofNullable(minWeightGsm),
                Boolean.TRUE.equals(plainSurfaceOnly),
                Boolean.TRUE.equals(closeFitOnly),
                Optional.ofNullable(keepAtLeastM),
                Optional.ofNullable(requiredTreatment),
                Optional.ofNullable(requiredCertificate),
                Optional.ofNullable(askAbout));
        RuleReach reach = new RuleReach(Optional.ofNullable(withinM), roles == null ? Set.of() : Set.copyOf(roles));
        Provenance from = new Provenance(
                Optional.ofNullable(source),
                DayText.day("issuedOn", Optional.ofNullable(issuedOn)),
                Optional.ofNullable(edition),
                DayText.day("validFrom", Optional.ofNullable(validFrom)),
                DayText.day("validUntil", Optional.ofNullable(validUntil)));
        return new SafetyRule(authority, statement, asked, reach, from);
    }

    private static List<String> told(@Nullable List<String> written) {
        return written == null ? List.of() : written;
    }
}
