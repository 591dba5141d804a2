package campcloth.pages.sheet;

import campcloth.advice.Warning;
import campcloth.errand.Errand;
import campcloth.errand.ErrandSheet;
import campcloth.plan.CuttingPlan;
import campcloth.plan.Making;
import campcloth.plan.Matched;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * All that the page of a sheet shows.
 *
 * @param id id of the errand
 * @param errand the errand
 * @param plan its plan
 * @param sheet what to do and to buy for it
 * @param eventNow how the event on file stands to the one that the errand remembers
 */
record SheetView(String id, Errand errand, CuttingPlan plan, ErrandSheet sheet, EventNow eventNow) {

    /** How an event on file stands to the one that was remembered. */
    enum EventNow {
        /** It was told with the errand and is on no file. */
        TOLD,
        SAME,
        CHANGED,
        GONE
    }

    public LocalDate keptOn() {
        return errand.createdAt().atZone(ZoneOffset.UTC).toLocalDate();
    }

    public List<Warning> stops() {
        return warnings(true);
    }

    public List<Warning> cautions() {
        return warnings(false);
    }

    private List<Warning> warnings(boolean stop) {
        return sheet.heed().warnings().stream()
                .filter(warning -> (warning.severity() == Warning.Severity.STOP) == stop)
                .toList();
    }

    public List<PieceRow> pieces() {
        return PieceRow.of(plan);
    }

    public Optional<Matched> matched() {
        return plan.making().flatMap(Making::matched);
    }
}
