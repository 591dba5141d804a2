package campcloth.garment.drawing;

import campcloth.garment.TapeLine;

/** The tape on a person. */
final class Persons {

    private static final View WHOLE = new View(104, 16, 1);
    private static final View UPPER = new View(108, 16, 1.55);
    private static final View NEAR = new View(140, 24, 3);
    private static final View LEGS = new View(96, -130, 1.45);

    private static final double BESIDE = 190;

    private Persons() {}

    static Sketch of(TapeLine tape) {
        return switch (tape) {
            case CHEST -> round(UPPER, 31.5, 86, 6, 222, "fullest part of the chest");
            case WAIST -> round(WHOLE, 27, 122, 5, BESIDE, "waist");
            case HIP -> round(WHOLE, 34.5, 166, 6, BESIDE, "fullest part of hip and seat");
            case SHOULDERS -> round(UPPER, 45, 78, 8, 222, "over both arms");
            case NECK -> neck();
            case HEAD -> head();
            case OVER_HEAD -> overHead();
            case CAPE -> cape();
            case THIGH -> thigh();
            case INSIDE_LEG -> insideLeg();
            case SHOULDER_TO_HEM -> shoulderToHem();
            case WAIST_TO_HEM -> waistToHem();
            case NAPE_TO_HEM -> nape(270, "hem");
            case NAPE_TO_GROUND -> nape(322, "ground");
            case WAIST_TO_HIP -> waistToHip();
            case SLEEVE -> sleeve();
            case BIB -> bib();
            case STRAP -> strap();
            case ACROSS_SHOULDERS -> across();
            default -> throw new IllegalArgumentException(tape + " lies on no whole person");
        };
    }

    static Sketch front(View view) {
        Sketch sketch = new Sketch(view);
        sketch.skin(Figures.BODY);
        sketch.skin(Figures.EAR);
        sketch.skin(Figures.OTHER_EAR);
        sketch.skin(Figures.HEAD);
        sketch.dot(-5.5, 20, 0.9 * view.scale());
        sketch.dot(5.5, 20, 0.9 * view.scale());
        sketch.stroke(Figures.NOSE);
        sketch.stroke(Figures.MOUTH);
        return sketch;
    }

    private static Sketch back(View view) {
        Sketch sketch = new Sketch(view);
        sketch.skin(Figures.BODY);
        sketch.skin(Figures.EAR);
        sketch.skin(Figures.OTHER_EAR);
        sketch.filled(Figures.HEAD, "url(#level)");
        sketch.words(BESIDE, 40, "seen from behind");
        return sketch;
    }

    private static Sketch round(View view, double half, double y, double dip, double labelX, String words) {
        Sketch sketch = front(view);
        sketch.round(-half, half, y, dip);
        sketch.label(half, y, labelX, Math.min(view.y(y) + 5, Sketch.HEIGHT - 60), words);
        return sketch;
    }

    private static Sketch neck() {
        Sketch sketch = front(NEAR);
        sketch.round(-12, 12, 49, 4);
        sketch.label(12, 49, 222, 100, "base of the neck");
        return sketch;
    }

    private static Sketch head() {
        Sketch sketch = front(NEAR);
        sketch.round(-15.4, 15.4, 12, 3);
        sketch.label(15.4, 12, 220, 40, "above ears and eyebrows");
        return sketch;
    }

    private static Sketch overHead() {
        Sketch sketch = front(NEAR);
        sketch.tape(
                Line.of(13, 51, 17, 44, 20.5, 30, 20, 16, 14, 3, 0, -2, -14, 3, -20, 16, -20.5, 30, -17, 44, -13, 51));
        sketch.label(0, -2, 232, 26, "crown");
        sketch.label(14, 50, 226, 112, "base of the neck");
        return sketch;
    }

    private static Sketch cape() {
        View view = new View(104, 16, 2.1);
        Sketch sketch = front(view);
        sketch.thought(Line.of(-14, 49, -34, 56, -50, 76, -58, 98)
                .then(-30, 112, 0, 116, 30, 112, 58, 98)
                .then(50, 76, 34, 56, 14, 49));
        sketch.tape(Line.of(12.5, 49.5, 26, 54, 38, 59, 46, 70, 51, 84, 57, 98));
        sketch.label(12.5, 49.5, 200, 60, "base of the neck");
        sketch.label(57, 98, 240, 260, "cape's hem");
        return sketch;
    }

    private static Sketch thigh() {
        Sketch sketch = front(LEGS);
        sketch.round(4, 34, 196, 5);
        sketch.label(34, 196, BESIDE, 160, "thickest part of the thigh");
        return sketch;
    }

    private static Sketch insideLeg() {
        Sketch sketch = front(LEGS);
        sketch.tape(Line.of(1, 175, 4, 208, 6, 240, 6, 270, 7.5, 306));
        sketch.label(1, 175, BESIDE, 60, "crotch");
        sketch.label(7.5, 306, BESIDE, 290, "where the leg is to end");
        return sketch;
    }

    private static Sketch shoulderToHem() {
        Sketch sketch = front(WHOLE);
        sketch.thought(Line.of(-14, 51).straight(-36, 58, -34, 90, -54, 246, 54, 246, 34, 90, 36, 58, 14, 51));
        sketch.tape(Line.of(22, 53, 22, 100, 22, 160, 22, 246));
        sketch.label(22, 53, BESIDE, 60, "shoulder seam, near the neck");
        sketch.label(22, 246, BESIDE, 280, "hem, as long as you want it");
        return sketch;
    }

    private static Sketch waistToHem() {
        Sketch sketch = front(WHOLE);
        sketch.thought(Line.of(-27, 122).straight(-62, 296, 62, 296, 27, 122, -27, 122));
        sketch.tape(Line.of(14, 122, 14, 170, 14, 240, 14, 296));
        sketch.label(14, 122, BESIDE, 130, "waist");
        sketch.label(14, 296, BESIDE, 280, "hem, as long as you want it");
        return sketch;
    }

    private static Sketch nape(double to, String end) {
        Sketch sketch = back(WHOLE);
        if (to < 322) {
            sketch.thought(Line.of(-10, 48).straight(-40, 60, -78, to, 78, to, 40, 60, 10, 48));
        } else {
            sketch.thought(Line.of(-90, to).straight(78, to));
        }
        sketch.tape(Line.of(0, 47, 0, 100, 0, 200, 0, to));
        sketch.label(0, 47, BESIDE, 90, "nape: the bone that stands out where the neck bends");
        sketch.label(0, to, BESIDE, Math.min(to + 10, 326), end);
        return sketch;
    }

    private static Sketch waistToHip() {
        Sketch sketch = front(WHOLE);
        sketch.thought(Line.of(-27, 122).straight(27, 122));
        sketch.thought(Line.of(-34, 166).straight(34, 166));
        sketch.tape(Line.of(26, 122, 29, 136, 33, 152, 34.5, 166));
        sketch.label(26, 122, BESIDE, 120, "waist");
        sketch.label(34.5, 166, BESIDE, 190, "fullest part of hip and seat");
        return sketch;
    }

    private static Sketch sleeve() {
        Sketch sketch = front(UPPER);
        sketch.tape(Line.of(38, 58.5, 44.5, 68, 48, 86, 50, 106, 54, 124, 59, 142, 62, 157));
        sketch.label(38, 58.5, 222, 80, "shoulder seam");
        sketch.label(50, 106, 222, 170, "round the bent elbow");
        sketch.label(62, 157, 222, 268, "cuff");
        return sketch;
    }

    private static Line apron() {
        return Line.of(-16, 88).straight(16, 88, 18, 122, 32, 122, 42, 240, -42, 240, -32, 122, -18, 122, -16, 88);
    }

    private static Sketch bib() {
        Sketch sketch = front(WHOLE);
        sketch.thought(apron());
        sketch.tape(Line.of(0, 122, 0, 105, 0, 88));
        sketch.label(0, 88, BESIDE, 86, "upper edge of the bib");
        sketch.label(0, 122, BESIDE, 150, "waist");
        return sketch;
    }

    private static Sketch strap() {
        Sketch sketch = front(UPPER);
        sketch.thought(apron());
        sketch.behind(Line.of(20, 52, 6, 70, -12, 96, -27, 122));
        sketch.tape(Line.of(15, 88, 17, 74, 19, 62, 20, 52));
        sketch.label(20, 53, 222, 70, "over the shoulder");
        sketch.label(15, 88, 222, 160, "bib");
        sketch.label(-27, 122, 222, 260, "behind the back to the waistband at the other side");
        return sketch;
    }

    private static Sketch across() {
        Sketch sketch = front(UPPER);
        sketch.thought(Line.of(-48, 62).straight(-48, 212, 48, 212, 48, 62));
        sketch.tape(Line.of(-48, 62, 0, 62, 48, 62));
        sketch.label(48, 62, 222, 90, "a little past the shoulder, edge to edge");
        return sketch;
    }
}
