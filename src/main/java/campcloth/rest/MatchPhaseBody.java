package campcloth.rest;

import campcloth.layout.Match;
import campcloth.layout.MatchPhase;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The place of the repeat on which the match points of a group lie. */
@Schema(name = "MatchPhase")
@JsonInclude(JsonInclude.Include.NON_NULL)
record MatchPhaseBody(
        @Schema(description = "name of the group; the usual one where it is left out") @Nullable
        String group,

        @Schema(description = "place along in cm, from the beginning of a repeat") @Nullable
        Double alongCm,

        @Schema(description = "place across in cm, from the beginning of a repeat") @Nullable
        Double acrossCm) {

    MatchPhase phase() {
        return new MatchPhase(
                group == null ? Match.USUAL : group, Optional.ofNullable(alongCm), Optional.ofNullable(acrossCm));
    }

    static MatchPhaseBody of(MatchPhase phase) {
        return new MatchPhaseBody(
                phase.group(), phase.alongCm().orElse(null), phase.acrossCm().orElse(null));
    }
}
