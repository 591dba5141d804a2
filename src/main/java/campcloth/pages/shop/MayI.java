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
                .map(warning -> said(warning, judged))
                .distinct()
                .toList();
        return new MayI(judged, stops, cautions, rulesTold);
    }

    /** What melts is the share of fibre that does or may, in percent, or where there is none a film or wax. */
    private static Said said(Warning warning, Judged judged) {
        double melting = judged.candidate().cloth().blend().meltablePercent();
        return new Said(melting == 0 && warning.code().equals("MELT") ? "FILM" : warning.code(), Words.number(melting));
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
