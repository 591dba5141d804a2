package campcloth.rest;

import campcloth.event.Event;
import campcloth.event.KeptRules;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import campcloth.fire.MissingRules;
import campcloth.fire.RuleConflict;
import campcloth.fire.RuleConflicts;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The rules of an event as they are sent and served; what is not a rule is served only, and ignored where it is sent. */
@Schema(name = "Rules", description = "The rules of an event as they stand, or as they stood at an earlier version")
record RulesBody(
        @Schema(accessMode = Schema.AccessMode.READ_ONLY) @Nullable
        String eventId,

        @Schema(accessMode = Schema.AccessMode.READ_ONLY, description = "version of the event") @Nullable
        Long version,

        @Schema(accessMode = Schema.AccessMode.READ_ONLY, format = "date-time", description = "when it was written")
        @Nullable
        String keptAt,

        @NotNull @Size(max = Event.MOST_RULES, message = "give at most 100 rules")
        List<@NotNull @Valid RuleBody> rules,

        @Schema(accessMode = Schema.AccessMode.READ_ONLY, description = "where rules differ, and what stands") @Nullable
        List<ConflictBody> conflicts,

        @Schema(
                accessMode = Schema.AccessMode.READ_ONLY,
                description = "authorities without a rule on file, which is no permission")
        @Nullable
        List<MissingBody> missing) {

    /** Rules that differ about the same thing. */
    @Schema(name = "RuleConflict")
    record ConflictBody(
            String about,

            @Schema(description = "the rules that differ, the strictest first where one is")
            List<QuotedRule> rules,

            String stands,

            @Schema(description = "whether no cloth keeps to all of them where all of them hold")
            boolean noClothMeetsAll,

            String text) {

        static List<ConflictBody> of(List<SafetyRule> rules, Fibres fibres) {
            return RuleConflicts.of(rules, fibres).stream()
                    .map(ConflictBody::of)
                    .toList();
        }

        private static ConflictBody of(RuleConflict conflict) {
            return new ConflictBody(
                    conflict.about(),
                    conflict.rules().stream().map(QuotedRule::of).toList(),
                    conflict.stands(),
                    conflict.noClothMeetsAll(),
                    conflict.text());
        }
    }

    /** A rule in its own words, with where it stands. */
    record QuotedRule(
            Authority authority,
            String statement,
            @Nullable String source,
            @Nullable String issuedOn,
            @Nullable String edition) {

        static QuotedRule of(SafetyRule rule) {
            RuleBody body = RuleBody.of(rule);
            return new QuotedRule(body.authority(), body.statement(), body.source(), body.issuedOn(), body.edition());
        }
    }

    /** An authority without a rule on file. */
    @Schema(name = "MissingRules")
    record MissingBody(Authority authority, String text) {

        static List<MissingBody> of(List<SafetyRule> rules) {
            return MissingRules.of(rules).stream()
                    .map(authority -> new MissingBody(authority, MissingRules.sentence(authority)))
                    .toList();
        }
    }

    static RulesBody of(KeptRules kept, Fibres fibres) {
        return new RulesBody(
                kept.eventId(),
                kept.version(),
                kept.keptAt().toString(),
                kept.rules().stream().map(RuleBody::of).toList(),
                ConflictBody.of(kept.rules(), fibres),
                MissingBody.of(kept.rules()));
    }

    /** Refuses a body that carries the id of another event than the address. */
    void isOf(String address) {
        if (eventId != null && !eventId.equals(address)) {
            throw Refused.of("eventId", "is not the id in the address", "leave it out, or send to its own address");
        }
    }
}
