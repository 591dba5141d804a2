package campcloth.rest;

import campcloth.fire.BurnTestScreen;
import io.swagger.v3.oas.annotations.media.Schema;

/** What a flammability test of the United States asks of the cloth: information beside the grading, which does not use it. */
@Schema(name = "BurnTest")
record BurnTestBody(BurnTestScreen.Outcome outcome, String because, String source, String information) {

    static BurnTestBody of(BurnTestScreen screen) {
        return new BurnTestBody(screen.outcome(), screen.because(), BurnTestScreen.SOURCE, BurnTestScreen.INFORMATION);
    }
}
