package campcloth.cloth.swatch;

import campcloth.cloth.MarkPair;
import campcloth.cloth.MarkedShrinkage;
import campcloth.cloth.MarkedShrinkage.Course;
import campcloth.cloth.Property;
import campcloth.cloth.Swatch;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shrinkage from marks in one direction: {@code (before - after) / before x 100} of each pair, mean over the pairs; the
 * dimensional change of ISO 5077 with the other sign. The figure is the total after the last wash measured, for so much cloth
 * must be bought. What cannot be read: one step of the ruler before and one after, added up; more pairs do not lessen it, for
 * they are read with one ruler by one hand.
 *
 * @param direction in words
 * @param pairs marks, none where the direction was not measured
 * @param rulerStepMm smallest step of the ruler
 */
record ShrinkageOfMarks(String direction, List<MarkPair> pairs, double rulerStepMm) {

    private static final double MM_PER_CM = 10;
    /** ISO 3759. */
    private static final double LEAST_APART_CM = 35;

    MarkedShrinkage shrinkage() {
        List<Double> means = IntStream.rangeClosed(1, washes())
                .mapToObj(wash -> after(wash).mean())
                .toList();
        return new MarkedShrinkage(
                pairs.size(), means, after(washes()).standardError(), readingErrorPercent(), course());
    }

    Figure figure(Property property, Swatch swatch) {
        String how = MeasuredFigure.counted(pairs.size(), "pair of marks", "pairs of marks")
                + (washes() > 1 ? ", " + washes() + " washes" : "");
        return MeasuredFigure.of(property, after(washes()), readingErrorPercent(), swatch, how);
    }

    private int washes() {
        return pairs.get(0).afterCm().size();
    }

    private Spread after(int wash) {
        return Spread.of(pairs.stream().map(pair -> pair.shorterPercent(wash)).toList());
    }

    private double readingErrorPercent() {
        return pairs.stream()
                .mapToDouble(pair -> rulerStepMm
                        / MM_PER_CM
                        / pair.beforeCm()
                        * 100
                        * (1 + pair.afterCm().get(washes() - 1) / pair.beforeCm()))
                .average()
                .orElseThrow();
    }

    private Course course() {
        if (washes() == 1) {
            return Course.ONE_WASH_ONLY;
        }
        Spread step = lastStep();
        double unsure = Math.max(step.standardError(), readingErrorPercent());
        return Math.abs(step.mean()) > unsure ? Course.STILL_MOVING : Course.AT_REST;
    }

    private Spread lastStep() {
        return Spread.of(pairs.stream()
                .map(pair -> pair.shorterPercent(washes()) - pair.shorterPercent(washes() - 1))
                .toList());
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        double nearest = pairs.stream().mapToDouble(MarkPair::beforeCm).min().orElseThrow();
        if (nearest < LEAST_APART_CM) {
            notes.add("Marks " + direction + " lie " + Words.number(nearest) + " cm apart; ISO 3759 asks for at least "
                    + Words.number(LEAST_APART_CM) + " cm. The closer they lie, the more a misread mm counts.");
        }
        if (pairs.size() == 1) {
            notes.add("One pair of marks " + direction + ": the interval holds only what could be misread, not how the"
                    + " cloth differs from place to place. Three pairs say more.");
        }
        notes.add(courseInWords());
        return notes;
    }

    private String courseInWords() {
        return switch (course()) {
            case ONE_WASH_ONLY ->
                "One wash was measured " + direction + ": it says nothing of later ones, which may take more.";
            case STILL_MOVING ->
                "It still moves " + direction + ": wash " + washes() + " changed it by "
                        + Words.fixed(lastStep().mean(), 1)
                        + " % of the first length, more than its standard error and than can be misread. Wash and measure"
                        + " again until it rests.";
            case AT_REST ->
                "It has come to rest " + direction + " as far as can be read: wash " + washes()
                        + " changed it by no more than could be misread or differs between the marks.";
        };
    }
}
