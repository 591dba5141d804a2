package campcloth.pages.sheet;

import campcloth.advice.Warning;
import campcloth.errand.Errand;
import campcloth.errand.ErrandSheet;
import campcloth.errand.GarmentSheet;
import campcloth.errand.OpenQuestion;
import campcloth.errand.SewingLine;
import campcloth.errand.SheetWearer;
import campcloth.errand.WornWith;
import campcloth.fire.RuleConflict;
import campcloth.fire.RuleOutcome;
import campcloth.garment.Opening;
import campcloth.pages.ForMakers;
import campcloth.plan.CuttingPlan;
import campcloth.plan.Making;
import campcloth.plan.Matched;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

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

    /** What there is room for on three pages beside all that every sheet has: project choice, held by what is printed in tests. */
    private static final int WARNINGS_CHARACTERS = 1000;

    private static final int RULES_CHARACTERS = 1600;
    private static final int WORN_CHARACTERS = 240;
    private static final int MOST_ROWS = 12;
    private static final int FEW_RULES = 4;

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

    public PaperLines<Warning> stops() {
        return warnings(warning -> warning.severity() == Warning.Severity.STOP);
    }

    /** What is less urgent; rules that do not reach the wearer stand among the rules alone. */
    public PaperLines<Warning> cautions() {
        return warnings(warning -> warning.severity() == Warning.Severity.CAUTION
                || warning.severity() == Warning.Severity.NOTE && !isRule(warning));
    }

    private PaperLines<Warning> warnings(Predicate<Warning> which) {
        return PaperLines.of(
                sheet.heed().warnings().stream().filter(which).toList(), Warning::text, WARNINGS_CHARACTERS);
    }

    private boolean isRule(Warning warning) {
        return sheet.rules().outcomes().stream().anyMatch(rule -> warning.text().startsWith(rule.quoted()));
    }

    /** The strictest first. */
    public PaperLines<RuleOutcome> rules() {
        return PaperLines.of(
                sheet.rules().outcomes().stream()
                        .sorted(Comparator.comparing(RuleOutcome::outcome).reversed())
                        .toList(),
                rule -> rule.quoted() + rule.because(),
                RULES_CHARACTERS);
    }

    public PaperLines<RuleConflict> conflicts() {
        return PaperLines.of(sheet.rules().conflicts(), RuleConflict::text, WARNINGS_CHARACTERS);
    }

    public PaperLines<OpenQuestion> toAsk() {
        return PaperLines.of(sheet.toAsk(), ask -> ask.question() + ask.because(), RULES_CHARACTERS);
    }

    public PaperLines<String> wornUnder() {
        return worn(WornWith.of(errand.garment().outfit()).under());
    }

    public PaperLines<String> wornOver() {
        return worn(WornWith.of(errand.garment().outfit()).over());
    }

    private static PaperLines<String> worn(List<String> told) {
        return PaperLines.of(told, words -> words, WORN_CHARACTERS);
    }

    /** Whether paper has to be set closer for all of it. */
    public boolean isLong() {
        return !sheet.wearers().isEmpty() || sheet.rules().outcomes().size() > FEW_RULES;
    }

    /** Whether they are so many that paper has room for a list of them alone. */
    public boolean hasManyPieces() {
        return pieces().size() > MOST_ROWS;
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

    /** Whether the same is to be said of where it goes on. */
    public boolean opensAsFirst(GarmentSheet garment) {
        Optional<String> first = sheet.garments().get(0).fitting().opening().map(Opening::words);
        return garment.fitting().opening().map(Opening::words).equals(first);
    }

    public List<GarmentSheet> sewnAsFirst() {
        return sheet.garments().stream().filter(this::isSewnAsFirst).toList();
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
