package campcloth.advice;

import campcloth.figure.Canvas;
import campcloth.figure.SvgDocument;
import campcloth.figure.TextWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How firm the order of a ranking is, as an SVG picture in black on white: for each of the first cloths its score with what it can
 * be, and how often it is among the first three. Ruled-out cloths are counted, never drawn.
 */
public final class RankingDrawing {

    /** So many cloths are drawn. */
    public static final int MOST = 8;

    private static final double WIDTH = 340;
    private static final double LEFT = 10;
    private static final double SCALE = 190;
    private static final double NUMBERS_X = LEFT + SCALE + 10;
    private static final double LETTERS = 13;
    private static final double LINE = 16;
    private static final double BAR = 13;

    private final Canvas canvas = new Canvas();
    private double y;

    private RankingDrawing() {}

    public static String svg(Ranking ranking, Robustness robustness) {
        RankingDrawing drawing = new RankingDrawing();
        drawing.draw(ranking, robustness);
        return new SvgDocument("How firm the order is", String.join(" ", text(ranking, robustness)))
                .hatchings(6)
                .of(0, 0, WIDTH, drawing.y + 8, drawing.canvas.drawn());
    }

    /** The cloths drawn, best first. */
    public static List<RankingRow> rows(Ranking ranking, Robustness robustness) {
        List<Judged> open = open(ranking);
        return IntStream.range(0, Math.min(MOST, open.size()))
                .mapToObj(i -> RankingRow.of(i + 1, open.get(i), robustness))
                .toList();
    }

    /** The same in sentences: each cloth drawn, how many are not, how firm the first place is. */
    public static List<String> text(Ranking ranking, Robustness robustness) {
        List<String> sentences = new ArrayList<>(
                rows(ranking, robustness).stream().map(RankingRow::sentence).toList());
        sentences.addAll(notShown(ranking));
        sentences.add(robustness.because());
        return List.copyOf(sentences);
    }

    private static List<Judged> open(Ranking ranking) {
        return ranking.judged().stream()
                .filter(judged -> judged.verdict() != Verdict.RULED_OUT)
                .toList();
    }

    private static List<String> notShown(Ranking ranking) {
        List<String> sentences = new ArrayList<>();
        int more = open(ranking).size() - MOST;
        if (more > 0) {
            sentences.add(more == 1 ? "One more is not shown." : more + " more are not shown.");
        }
        long out = ranking.count(Verdict.RULED_OUT);
        if (out > 0) {
            sentences.add((out == 1 ? "One is" : out + " are") + " ruled out and not shown: no score changes that.");
        }
        return sentences;
    }

    private void draw(Ranking ranking, Robustness robustness) {
        y = 4;
        write(true, "How firm the order is");
        explain(robustness);
        rows(ranking, robustness).forEach(this::row);
        y += 8;
        notShown(ranking).forEach(sentence -> write(false, sentence));
        if (open(ranking).isEmpty()) {
            write(false, robustness.because());
        }
    }

    private void explain(Robustness robustness) {
        y += 8;
        canvas.line(LEFT, y + BAR / 2, LEFT + 44, y + BAR / 2, 1, Canvas.SOLID);
        canvas.box(LEFT + 8, y, 28, BAR, SvgDocument.RISING, 1);
        tick(LEFT + 24);
        explained("score on 0 to 100, from lowest to highest");
        canvas.box(LEFT, y, 44, BAR, "#fff", 1);
        canvas.box(LEFT, y, 30, BAR, SvgDocument.FALLING, 1);
        explained("how often among the first three of "
                + (robustness.samples() == 1 ? "one ranking" : robustness.samples() + " rankings")
                + " with figures and wearers drawn");
    }

    private void explained(String words) {
        double line = y + 11;
        for (String part : TextWidth.lines(words, LETTERS, WIDTH - LEFT - 60)) {
            canvas.text(LEFT + 54, line, LETTERS, "start", part);
            line += LINE;
        }
        y = line - LINE + 11;
    }

    private void row(RankingRow row) {
        y += 8;
        canvas.line(LEFT, y, WIDTH - LEFT, y, 0.6, Canvas.SOLID);
        String name = row.place() + ". " + row.name();
        y += LETTERS + 5;
        canvas.boldText(LEFT, y, LETTERS + 1, "start", TextWidth.shortened(name, LETTERS + 1, WIDTH - 2 * LEFT));
        if (!row.provisos().isEmpty()) {
            y += LINE;
            canvas.text(LEFT, y, LETTERS, "start", String.join(", ", row.provisos()));
        }
        y += 7;
        score(row);
        y += BAR + 6;
        share(row);
        y += BAR;
    }

    private void score(RankingRow row) {
        canvas.line(LEFT, y + BAR / 2, LEFT + SCALE, y + BAR / 2, 1, Canvas.SOLID);
        canvas.line(LEFT, y + 3, LEFT, y + BAR - 3, 1, Canvas.SOLID);
        canvas.line(LEFT + SCALE, y + 3, LEFT + SCALE, y + BAR - 3, 1, Canvas.SOLID);
        double low = at(row.scoreLow());
        canvas.box(low, y, Math.max(1, at(row.scoreHigh()) - low), BAR, SvgDocument.RISING, 1);
        tick(at(row.score()));
        canvas.text(
                NUMBERS_X,
                y + 11,
                LETTERS,
                "start",
                RankingRow.whole(row.score()) + " (" + RankingRow.whole(row.scoreLow()) + " to "
                        + RankingRow.whole(row.scoreHigh()) + ")");
    }

    private void tick(double x) {
        canvas.line(x, y - 3, x, y + BAR + 3, 4, Canvas.SOLID);
    }

    private void share(RankingRow row) {
        if (row.topThreePercent().isEmpty()) {
            canvas.text(LEFT, y + 11, LETTERS, "start", "among the first three: not drawn");
            return;
        }
        double percent = row.topThreePercent().get();
        canvas.box(LEFT, y, SCALE, BAR, "#fff", 1);
        if (percent > 0) {
            canvas.box(LEFT, y, at(percent) - LEFT, BAR, SvgDocument.FALLING, 1);
        }
        canvas.text(NUMBERS_X, y + 11, LETTERS, "start", RankingRow.whole(percent) + " % first three");
    }

    /** Where a value of 0 to 100 lies. */
    private static double at(double value) {
        return LEFT + SCALE * Math.min(100, Math.max(0, value)) / 100;
    }

    private void write(boolean bold, String words) {
        double letters = bold ? LETTERS + 2 : LETTERS;
        for (String line : TextWidth.lines(words, letters, WIDTH - 2 * LEFT)) {
            y += letters + 3;
            if (bold) {
                canvas.boldText(LEFT, y, letters, "start", line);
            } else {
                canvas.text(LEFT, y, letters, "start", line);
            }
        }
    }
}
