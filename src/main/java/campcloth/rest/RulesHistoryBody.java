package campcloth.rest;

import campcloth.event.RulesHistory;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** The versions of an event's rules. */
@Schema(name = "RulesHistory", description = "The versions of an event's rules, newest first, at most 500 of them")
record RulesHistoryBody(
        String eventId,

        @Schema(description = "how many versions are kept") long total,

        List<VersionBody> versions) {

    /** How many versions are listed at most. */
    static final int MOST = 500;

    /** One version. */
    @Schema(name = "RulesVersion")
    record VersionBody(
            @Schema(description = "version of the event; ?version= of its rules serves them as they stood")
            long version,

            @Schema(format = "date-time") String keptAt,

            @Schema(description = "how many rules it has") int rules,

            @Schema(description = "whether they differ from those of the version before")
            boolean changed) {}

    static RulesHistoryBody of(String eventId, RulesHistory history) {
        return new RulesHistoryBody(
                eventId,
                history.total(),
                history.versions().stream()
                        .map(v -> new VersionBody(v.version(), v.keptAt().toString(), v.rules(), v.changed()))
                        .toList());
    }
}
