package campcloth.rest;

import campcloth.fire.FireThreat;
import io.swagger.v3.oas.annotations.media.Schema;

/** One way in which the fire threatens the cloth there. */
@Schema(name = "FireThreat")
record ThreatAnswer(FireThreat.Kind kind, String text) {

    static ThreatAnswer of(FireThreat threat) {
        return new ThreatAnswer(threat.kind(), threat.text());
    }
}
