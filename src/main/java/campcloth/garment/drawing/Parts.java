package campcloth.garment.drawing;

import campcloth.garment.TapeLine;

/** The tape on a leg, an arm, somebody on a chair, or a garment lying flat. */
final class Parts {

    private static final View LEG = new View(66, 22, 1.35);
    private static final View FOOT = new View(90, -310, 2.7);
    private static final View FLAT = new View(150, 90, 1.45);
    private static final View FLAT_NEAR = new View(150, 110, 2.3);

    private Parts() {}

    static Sketch of(TapeLine tape) {
        return switch (tape) {
            case CALF -> calf();
            case ANKLE -> ankle();
            case ANKLE_TO_KNEE -> wraps();
            case HEEL -> heel();
            case CROTCH_DEPTH -> seated();
            case WRIST -> wrist();
            case GARMENT_ROUND -> round();
            case NECK_OPENING -> neck();
            case SLEEVE_TOP -> sleeveTop();
            case SLEEVE_END -> sleeveEnd();
            case LEG_END -> legEnd();
            default -> throw new IllegalArgumentException(tape + " lies on a whole person");
        };
    }

    private static Sketch leg(View view) {
        Sketch sketch = new Sketch(view);
        sketch.skin(Figures.LEG);
        return sketch;
    }

    private static Sketch calf() {
        Sketch sketch = leg(LEG);
        sketch.round(-33, 20, 76, 7);
        sketch.label(20, 76, 150, 130, "thickest part of the calf");
        return sketch;
    }

    private static Sketch ankle() {
        Sketch sketch = leg(LEG);
        sketch.round(-12.5, 15, 162, 5);
        sketch.label(15, 162, 150, 190, "above the ankle bones");
        return sketch;
    }

    private static Sketch wraps() {
        Sketch sketch = leg(LEG);
        sketch.thought(Line.of(-28, 40).straight(21, 40));
        sketch.thought(Line.of(-12, 168).straight(16, 168));
        sketch.tape(Line.of(4, 168, 4, 120, 4, 80, 4, 40));
        sketch.label(4, 40, 150, 70, "below the knee");
        sketch.label(4, 168, 150, 210, "ankle");
        return sketch;
    }

    private static Sketch heel() {
        Sketch sketch = leg(FOOT);
        sketch.behind(Line.of(-20, 220, -6, 196, 8, 180, 20, 177));
        sketch.tapeWithoutEnds(Line.of(-20, 220, -2, 209, 12, 195, 20, 177));
        sketch.label(20, 177, 190, 120, "instep");
        sketch.label(-20, 220, 60, 326, "under the heel");
        return sketch;
    }

    private static Sketch seated() {
        Sketch sketch = new Sketch(new View(60, 30, 1.15));
        sketch.all(Figures.CHAIR);
        sketch.skin(Figures.SEATED);
        sketch.skin(Figures.SEATED_HEAD);
        sketch.skin(Figures.SEATED_ARM);
        sketch.thought(Line.of(-21, 128).straight(21, 128));
        sketch.tape(Line.of(-10, 128, -10, 156, -10, 184));
        sketch.label(-10, 128, 150, 110, "waist");
        sketch.label(-10, 184, 214, 270, "seat of the chair");
        return sketch;
    }

    private static Sketch wrist() {
        Sketch sketch = Persons.front(new View(-110, -360, 3.7));
        sketch.skin(Figures.THUMB);
        sketch.all(Figures.FINGERS);
        sketch.round(51, 61.5, 159, 2);
        sketch.label(61.5, 159, 190, 190, "wrist, loose enough for the hand's edge");
        return sketch;
    }

    private static Sketch flat(View view) {
        Sketch sketch = new Sketch(view);
        sketch.cloth(Figures.FLAT);
        sketch.all(Figures.FLAT_SEAMS);
        sketch.filled(Figures.FLAT_NECK.straight(13, 0), "url(#level)");
        sketch.cloth(Figures.FLAT_BACK_NECK);
        sketch.words(12, 30, "a finished garment lying flat");
        return sketch;
    }

    private static Sketch round() {
        Sketch sketch = flat(FLAT);
        sketch.tape(Line.of(-46, 54, 0, 54, 46, 54));
        sketch.label(46, 54, 228, 210, "edge to edge, then times 2");
        return sketch;
    }

    private static Sketch neck() {
        Sketch sketch = flat(FLAT_NEAR);
        sketch.tape(Line.of(-13, 0, 0, 0, 13, 0));
        sketch.label(13, 0, 200, 76, "edge to edge");
        return sketch;
    }

    private static Sketch sleeveTop() {
        Sketch sketch = flat(FLAT);
        sketch.tape(Line.of(45, 0, 45.5, 20, 46, 42));
        sketch.label(45, 0, 200, 66, "shoulder");
        sketch.label(46, 42, 228, 210, "underarm; then times 2");
        return sketch;
    }

    private static Sketch sleeveEnd() {
        Sketch sketch = flat(FLAT);
        sketch.tape(Line.of(94, 4, 95, 17, 96, 30));
        sketch.label(96, 30, 228, 210, "edge to edge, then times 2");
        return sketch;
    }

    private static Sketch legEnd() {
        Sketch sketch = new Sketch(new View(110, 70, 1.6));
        sketch.cloth(Figures.FLAT_LEGS);
        sketch.words(12, 30, "a finished garment lying flat");
        sketch.tape(Line.of(8, 150, 24, 150, 40, 150));
        sketch.label(40, 150, 200, 290, "edge to edge, then times 2");
        return sketch;
    }
}
