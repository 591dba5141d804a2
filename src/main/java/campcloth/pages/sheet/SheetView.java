package campcloth.pages.sheet;

import campcloth.advice.Warning;
import campcloth.errand.Errand;
import campcloth.errand.ErrandSheet;
import campcloth.errand.GarmentSheet;
import campcloth.errand.SewingLine;
import campcloth.errand.SheetWearer;
import campcloth.pages.ForMakers;
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

    /** Who wears what of that name is cut for; empty where nobody said. */
    public String whose(GarmentSheet garment) {
        return sheet.wearers().stream()
                .filter(wearer -> wearer.garment().equals(garment.garment()))
                .map(SheetWearer::name)
                .findFirst()
                .orElse("");
    }

    /** Whether it is sewn as the first one is, in all but its lengths. */
    public boolean isSewnAsFirst(GarmentSheet garment) {
        GarmentSheet first = sheet.garments().get(0);
        return garment != first && making(garment).equals(making(first));
    }

    /** All but the lengths. */
    private static List<Object> making(GarmentSheet garment) {
        return List.of(
                garment.order().stream().map(SewingLine::what).toList(),
                garment.hems().stream()
                        .map(hem -> List.of(
                                hem.edge(),
                                hem.allowanceCm(),
                                hem.foldsCm(),
                                hem.stitchFromFoldMm(),
                                hem.secondRowFromEdgeMm()))
                        .toList());
    }

    /** What else is to know of the plan. */
    public List<String> notes() {
        return ForMakers.words(plan.notes());
    }

    /** What would make the length at hand do; empty where none was told, or it does. */
    public List<String> wouldHelp() {
        return plan.remnant().map(answer -> ForMakers.words(answer.wouldHelp())).orElse(List.of());
    }

    public Optional<Matched> matched() {
        return plan.making().flatMap(Making::matched);
    }
}
