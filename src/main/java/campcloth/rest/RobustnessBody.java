package campcloth.rest;

import campcloth.advice.Robustness;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How far the order of a ranking hangs on what nobody knows exactly. */
@Schema(
        name = "Robustness",
        description =
                "The best cloths ranked again and again behind the same gates, with the same criteria and weights, while their figures"
                        + " (triangular over the interval, the value likeliest, each figure by itself) and the wearer (the same for all"
                        + " cloths: metabolic rate anywhere in the range of the activity, sensitivity to prickle, how far used to heat)"
                        + " are drawn. The ranking judges cold by the lower and heat by the higher rate and presumes a wearer not used to"
                        + " heat; a drawn wearer has one rate for both and is used to heat more or less. Not a"
                        + " probability of comfort, and nothing about errors of the models: only of the order, given the intervals."
                        + " Weather, the rest of the outfit, fire and rules stay as they are. The distributions are choices of the"
                        + " project")
record RobustnessBody(
        @Schema(description = "how many times figures and wearer were drawn; 64 tell a half to about 6 percent points")
        int samples,

        @Schema(description = "of the draws: the same question is answered the same")
        long seed,

        @Schema(description = "how many cloths were drawn: those that may be among the first three, 40 at most")
        int sampledCloths,

        @Schema(
                description =
                        "how often the first cloth stays first, percent of the samples; null where all are ruled out")
        @Nullable
        Double firstPlacePercent,

        @Schema(description = "what was drawn and from where, in plain words; empty where nothing was")
        List<String> drawn,

        String because) {

    static RobustnessBody of(Robustness robustness) {
        return new RobustnessBody(
                robustness.samples(),
                robustness.seed(),
                robustness.sampled(),
                robustness
                        .firstPlacePercent()
                        .map(percent -> Rounded.to(percent, 1))
                        .orElse(null),
                robustness.drawn(),
                robustness.because());
    }
}
