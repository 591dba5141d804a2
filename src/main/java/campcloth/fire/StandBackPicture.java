package campcloth.fire;

import campcloth.figure.Canvas;
import campcloth.figure.SvgDocument;
import campcloth.figure.TextWidth;
import campcloth.figure.Words;
import campcloth.fire.FireRing.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws a {@link FirePlan}: the plan from above, a bar of scale, what each line means, what follows. */
final class StandBackPicture {

    static final double WIDTH = 340;

    private static final double LETTERS = 13;
    private static final double LINE = 16;
    private static final double MARGIN = 8;
    private static final double RADIUS = 138;
    private static final double CENTRE_X = WIDTH / 2;
    private static final double LABEL_HEIGHT = 19;
    private static final double LEAST_LABEL_RADIUS = 26;
    private static final double WORDS_X = 110;

    /** Beyond it nothing is drawn unless the cloth asks for more, m: nearer rings would be too small to tell apart. */
    private static final double FARTHEST_M = 12;

    private static final int MOST_DRAWN = 9;

    private final FirePlan plan;
    private final Canvas canvas = new Canvas();
    private final List<FireRing> shown;
    private final List<FireRing> drawn;
    private final List<double[]> taken = new ArrayList<>();
    private final double unitsPerM;
    private double centreY;
    private double y;

    StandBackPicture(FirePlan plan) {
        this.plan = plan;
        double farthest = plan.cloth()
                .map(cloth -> 1.2 * cloth.roundedUpM())
                .filter(m -> m > FARTHEST_M)
                .orElse(FARTHEST_M);
        List<FireRing> told = new ArrayList<>();
        for (FireRing ring : plan.rings()) {
            boolean same = told.stream()
                    .anyMatch(other -> other.words().equals(ring.words()) && other.metres() == ring.metres());
            if (!same && told.size() < MOST_DRAWN) {
                told.add(ring);
            }
        }
        shown = told;
        drawn = told.stream()
                .filter(ring -> ring.metres() > 0 && ring.metres() <= farthest)
                .sorted(Comparator.comparingDouble(FireRing::metres))
                .toList();
        unitsPerM = RADIUS / drawn.get(drawn.size() - 1).metres();
        draw();
    }

    String drawn() {
        return canvas.drawn();
    }

    double height() {
        return y + MARGIN;
    }

    private void draw() {
        y = 4;
        write(MARGIN, 15, true, "Around " + plan.fire());
        centreY = y + 12 + RADIUS;
        zones();
        circles();
        fire();
        labels();
        y = centreY + RADIUS + 20;
        scaleBar();
        shown.forEach(this::explained);
        y += 6;
        List<String> notes = plan.notes();
        for (int i = 0; i < notes.size(); i++) {
            write(MARGIN, LETTERS, i + 1 < notes.size(), notes.get(i));
        }
        long more = plan.rings().stream()
                        .map(ring -> ring.words() + ring.metres())
                        .distinct()
                        .count()
                - shown.size();
        if (more > 0) {
            write(MARGIN, LETTERS, false, more + " more distances of rules are told in words.");
        }
    }

    private void zones() {
        zone(Kind.SPARKS, SvgDocument.DOTS);
        zone(Kind.FLAMES, SvgDocument.CROSSED);
    }

    private void zone(Kind kind, String fill) {
        drawn.stream()
                .filter(ring -> ring.kind() == kind)
                .forEach(ring -> canvas.disc(CENTRE_X, centreY, ring.metres() * unitsPerM, fill, 0.8, Canvas.SOLID));
    }

    private void circles() {
        for (FireRing ring : drawn) {
            if (ring.kind() != Kind.SPARKS && ring.kind() != Kind.FLAMES) {
                double radius = ring.metres() * unitsPerM;
                canvas.disc(CENTRE_X, centreY, radius, "none", weight(ring.kind()), dash(ring.kind()));
            }
            if (ring.kind() == Kind.WEARER) {
                wearer(CENTRE_X - ring.metres() * unitsPerM, centreY);
            }
        }
    }

    /** Somebody seen from above: shoulders and head. */
    private void wearer(double x, double atY) {
        double inside = Math.max(x, 10);
        canvas.box(inside - 4.5, atY - 11, 9, 22, "#fff", 1.4);
        canvas.disc(inside, atY, 5, "#000", 1, Canvas.SOLID);
        taken.add(new double[] {inside - 7, atY - 13, inside + 7, atY + 13});
    }

    private void fire() {
        String flame = "M" + Canvas.n(CENTRE_X) + " " + Canvas.n(centreY - 11)
                + "c2 5 7 7 7 13c0 5 -3 8 -7 8c-4 0 -7 -3 -7 -8c0 -3 2 -4 3 -6c1 2 2 2 2 2c1 -3 0 -6 2 -9z";
        canvas.shape(flame, "#fff", "#000", 1.6);
        taken.add(new double[] {CENTRE_X - 9, centreY - 13, CENTRE_X + 9, centreY + 12});
    }

    private void labels() {
        for (int i = 0; i < drawn.size(); i++) {
            FireRing ring = drawn.get(i);
            String words = metres(ring);
            boolean same = i > 0 && metres(drawn.get(i - 1)).equals(words);
            if (!same) {
                label(ring, words, -70 + 50 * i);
            }
        }
    }

    /** On its ring where there is room, else beside it with a line to it. */
    private void label(FireRing ring, String words, double firstDegrees) {
        double width = TextWidth.of(words, LETTERS) + 4;
        double radius = ring.metres() * unitsPerM;
        for (double at = Math.max(radius, LEAST_LABEL_RADIUS); at < RADIUS + 1; at += 6) {
            for (int step = 0; step < 24; step++) {
                double angle = Math.toRadians(firstDegrees + 15 * step);
                double x = CENTRE_X + at * Math.cos(angle);
                double middle = centreY + at * Math.sin(angle);
                double[] box = {x - width / 2, middle - LABEL_HEIGHT / 2, x + width / 2, middle + LABEL_HEIGHT / 2};
                if (isFree(box)) {
                    if (at > radius) {
                        canvas.line(
                                CENTRE_X + radius * Math.cos(angle),
                                centreY + radius * Math.sin(angle),
                                x,
                                middle,
                                1,
                                Canvas.SOLID);
                    }
                    canvas.box(box[0], box[1], width, LABEL_HEIGHT, "#fff", 0.8);
                    canvas.boldText(x, middle + LETTERS * 0.36, LETTERS, "middle", words);
                    taken.add(box);
                    return;
                }
            }
        }
    }

    private boolean isFree(double[] box) {
        boolean inside = box[0] >= 2 && box[2] <= WIDTH - 2 && box[1] >= centreY - RADIUS - 10;
        return inside
                && taken.stream()
                        .noneMatch(
                                o -> box[0] < o[2] + 1 && o[0] < box[2] + 1 && box[1] < o[3] + 1 && o[1] < box[3] + 1);
    }

    private void scaleBar() {
        double metres = 0.5;
        for (double longer : new double[] {1, 2, 5, 10, 20}) {
            if (longer * unitsPerM <= 110) {
                metres = longer;
            }
        }
        double length = metres * unitsPerM;
        canvas.box(MARGIN, y, length / 2, 6, "#000", 1);
        canvas.box(MARGIN + length / 2, y, length / 2, 6, "#fff", 1);
        canvas.text(MARGIN + length + 6, y + 8, LETTERS, "start", Words.number(metres) + " m, from above, to scale");
        y += 16;
    }

    private void explained(FireRing ring) {
        double top = y;
        String far = drawn.contains(ring) ? "" : " (too far off or too near to be drawn)";
        write(WORDS_X, LETTERS, false, ring.words() + far);
        canvas.boldText(46, top + LINE, LETTERS, "start", metres(ring));
        sample(ring.kind(), top + LINE - 5);
        y += 3;
    }

    private void sample(Kind kind, double middle) {
        switch (kind) {
            case FLAMES -> canvas.box(MARGIN, middle - 6, 30, 12, SvgDocument.CROSSED, 0.8);
            case SPARKS -> canvas.box(MARGIN, middle - 6, 30, 12, SvgDocument.DOTS, 0.8);
            default -> canvas.line(MARGIN, middle, MARGIN + 30, middle, weight(kind), dash(kind));
        }
        if (kind == Kind.WEARER) {
            canvas.disc(MARGIN + 15, middle, 5, "#000", 1, Canvas.SOLID);
        }
    }

    private static double weight(Kind kind) {
        return switch (kind) {
            case CLOTH -> 3.4;
            case RULE_KEEP, RULE_REACH -> 2;
            case FLAMES, RING, SPARKS, WEARER -> 1.2;
        };
    }

    private static String dash(Kind kind) {
        return switch (kind) {
            case FLAMES, SPARKS, WEARER, CLOTH -> Canvas.SOLID;
            case RING -> "2 3";
            case RULE_KEEP -> "9 4";
            case RULE_REACH -> "9 3 2 3";
        };
    }

    private static String metres(FireRing ring) {
        return Canvas.n(ring.metres()) + " m";
    }

    private void write(double x, double letters, boolean bold, String words) {
        for (String line : TextWidth.lines(words, letters, WIDTH - MARGIN - x)) {
            y += letters + LINE - LETTERS;
            if (bold) {
                canvas.boldText(x, y, letters, "start", line);
            } else {
                canvas.text(x, y, letters, "start", line);
            }
        }
    }
}
