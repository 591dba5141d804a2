package campcloth.rest;

import campcloth.fire.BurnTestScreen;
import campcloth.fire.BurnTestScreen.Outcome;
import campcloth.fire.WornCloth;
import io.swagger.v3.oas.annotations.media.Schema;

/** What a flammability test of the United States asks of the cloth: information beside the grading, which does not use it. */
@Schema(name = "BurnTest")
record BurnTestBody(
        Outcome outcome,
        String because,

        @Schema(description = "id of the source, see /api/sources", example = "cfr-16-1610-1-d")
        String source,

        String information) {

    /**
     * Where nobody told the face, and the face decides, the outcome is not known.
     *
     * @param presumed the cloth with the worse face where none was told
     * @param plain the same with a plain face where none was told
     */
    static BurnTestBody of(WornCloth presumed, WornCloth plain) {
        BurnTestScreen screen = BurnTestScreen.of(presumed);
        boolean decides = BurnTestScreen.of(plain).outcome() != screen.outcome();
        return decides
                ? of(Outcome.NOT_KNOWN, "Nobody said whether its face is raised, and that decides.")
                : of(screen.outcome(), screen.because());
    }

    private static BurnTestBody of(Outcome outcome, String because) {
        return new BurnTestBody(outcome, because, BurnTestScreen.SOURCE, BurnTestScreen.INFORMATION);
    }
}
