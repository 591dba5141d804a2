package campcloth.pages.shop;

import campcloth.advice.Assessment;
import campcloth.advice.Judged;
import campcloth.advice.Warning;
import campcloth.cloth.Cloth;
import campcloth.figure.Words;
import campcloth.plan.CutCloth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to watch, in short lines: nothing that the verdict has told already. */
final class Watch {

    /** The middle of the scale: below it a criterion speaks against the cloth. */
    private static final double POOR = 50;

    private Watch() {}

    static List<Said> of(MayI may, Cloth cloth, HowMuch howMuch, LabelTold label) {
        List<Said> lines = new ArrayList<>();
        double melting = cloth.blend().meltablePercent();
        if (melting == 0) {
            lines.add(new Said(cloth.finish().closesPores() ? "film" : "noMelt", ""));
        } else if (!warns(may.judged(), "MELT")) {
            lines.add(new Said("melt", Words.number(melting)));
        }
        poor(may.judged(), "itch").ifPresent(itch -> lines.add(new Said("itch", itch.because())));
        if (!warns(may.judged(), "HEAT_STRAIN")) {
            poor(may.judged(), "heat").ifPresent(heat -> lines.add(new Said("heat", "")));
        }
        if (!warns(may.judged(), "COLD")) {
            poor(may.judged(), "warmth").ifPresent(warmth -> lines.add(new Said("warmth", "")));
        }
        howMuch.plan()
                .flatMap(plan -> plan.cloth().map(CutCloth::washing))
                .ifPresent(washing -> lines.add(new Said(washing.name(), "")));
        if (label.isRead()) {
            lines.add(new Said("label", ""));
        }
        return lines;
    }

    private static boolean warns(Judged judged, String code) {
        return judged.warnings().stream().anyMatch(w -> w.code().equals(code) && w.severity() != Warning.Severity.NOTE);
    }

    private static Optional<Assessment> poor(Judged judged, String criterion) {
        return judged.criteria().stream()
                .filter(a -> a.criterion().equals(criterion)
                        && a.score() < POOR
                        && a.quantity().isPresent())
                .findFirst();
    }
}
