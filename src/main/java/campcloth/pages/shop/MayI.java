package campcloth.pages.shop;

import campcloth.advice.Assessment;
import campcloth.advice.Judged;
import campcloth.advice.Warning;
import campcloth.advice.Warning.Severity;
import campcloth.figure.Words;
import java.util.List;

/**
 * The verdict with what decides it.
 *
 * @param judged the cloth that stands for the bale
 * @param stops what forbids it, in whole sentences
 * @param cautions what asks for care, in short; the sentences stand with the details
 * @param rulesTold whether the event has any rules on file
 */
public record MayI(Judged judged, List<Warning> stops, List<Said> cautions, boolean rulesTold) {

    static MayI of(Judged judged, boolean rulesTold) {
        List<Warning> stops = judged.warnings().stream()
                .filter(warning -> warning.severity() == Severity.STOP)
                .toList();
        List<Said> cautions = judged.warnings().stream()
                .filter(warning -> warning.severity() == Severity.CAUTION)
                .map(warning -> new Said("caution." + warning.code(), melting(judged)))
                .distinct()
                .toList();
        return new MayI(judged, stops, cautions, rulesTold);
    }

    /** Share that melts or may melt, percent. */
    private static String melting(Judged judged) {
        return Words.number(judged.candidate().cloth().blend().meltablePercent());
    }

    /** What fire says, where no warning tells why. */
    public String fire() {
        return judged.criteria().stream()
                .filter(criterion -> criterion.criterion().equals("fire"))
                .map(Assessment::because)
                .findFirst()
                .orElse("");
    }
}
