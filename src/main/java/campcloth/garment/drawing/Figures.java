package campcloth.garment.drawing;

import java.util.List;

/**
 * Plain figures to lay a tape on, in units of their own: a person 322 high (head to sole) with x = 0 in the middle, a leg from the
 * knee down, a person on a chair, garments lying flat. Drawn by eye; nobody's measures.
 */
final class Figures {

    static final Line BODY = Line.of(
                    8, 36, 8.5, 44, 12, 50, 24, 54, 36, 58, 43, 66, 46, 84, 48, 104, 52, 122, 57, 142, 60, 158, 64, 168,
                    65, 176, 62, 184, 57, 182, 54, 172, 52, 160, 47, 142, 41, 122, 37, 104, 34, 90, 32, 80)
            .then(31, 92, 28, 108, 27, 122, 30, 142, 34, 162, 35, 180, 33, 206, 28, 236, 28, 256, 25, 282, 19, 306)
            .then(21, 316, 26, 322)
            .straight(8, 322)
            .then(8, 314, 8.5, 304, 7, 284, 7, 258, 7, 238, 5, 208, 2.5, 180, 0, 174)
            .mirrored();

    static final List<Line> FINGERS = List.of(
            Line.of(57.5, 183, 56.5, 178, 56, 173),
            Line.of(60, 185, 59, 178, 58.5, 173),
            Line.of(62.5, 184, 61.5, 178, 61, 173));

    static final Line THUMB = Line.of(52.6, 164, 49.5, 168, 48, 175, 49.5, 178, 52, 175, 54.5, 173);

    /** Crown to chin. */
    static final Line HEAD =
            Line.of(0, 0, 10, 3, 15, 12, 15.5, 22, 13.5, 32, 8, 40, 0, 43).mirrored();

    static final Line EAR = Line.of(15.2, 18, 18, 18, 18, 26, 14.8, 29);
    static final Line OTHER_EAR = Line.of(-15.2, 18, -18, 18, -18, 26, -14.8, 29);
    static final Line MOUTH = Line.of(-4, 33.5, 0, 34.5, 4, 33.5);
    static final Line NOSE = Line.of(0, 22, -2, 27.5, 1, 28);

    static final Line LEG = Line.of(
                    24, 0, 27, 14, 26, 26, 21, 42, 20, 80, 16, 130, 15, 160, 20, 178, 40, 192, 64, 200, 76, 208, 78,
                    216)
            .then(74, 221, 66, 222)
            .straight(-14, 222)
            .then(
                    -22, 218, -23, 206, -16, 190, -12, 168, -13, 150, -22, 116, -33, 80, -32, 58, -25, 30, -23, 12, -23,
                    0);

    static final Line SEATED = Line.of(
                    8, 38, 9, 50, 18, 62, 22, 84, 20, 112, 22, 130, 34, 140, 70, 143, 98, 145, 108, 152, 110, 164)
            .then(106, 190, 104, 230, 102, 252)
            .then(116, 260, 124, 266, 124, 270)
            .straight(82, 270)
            .then(84, 240, 84, 210, 82, 182)
            .then(60, 184, 20, 184, -12, 182)
            .then(-26, 176, -28, 160, -22, 140, -20, 122, -25, 96, -24, 70, -14, 54, -8, 50, -8, 38);

    static final Line SEATED_HEAD = Line.of(
            -2, 0, 12, 3, 17, 14, 17, 20, 20, 27, 17, 29, 16, 38, 8, 42, 0, 40, -12, 34, -17, 20, -14, 6, -2, 0);

    static final Line SEATED_ARM = Line.of(-4, 62, -12, 70, -12, 98, -6, 118, 16, 132, 46, 136, 58, 134)
            .then(58, 128, 46, 126, 20, 118, 8, 106, 8, 84, 8, 68, -4, 62);

    static final List<Line> CHAIR = List.of(
            Line.of(-34, 184).straight(74, 184, 74, 191, -34, 191, -34, 184),
            Line.of(-30, 191).straight(-30, 270),
            Line.of(70, 191).straight(70, 270));

    /** Front of a garment with sleeves, lying flat; its shoulder at y = 0. */
    static final Line FLAT = Line.of(13, 0)
            .straight(45, 0, 94, 4, 96, 30, 46, 42, 46, 120)
            .then(58, 166)
            .then(30, 169, 0, 170)
            .mirrored();

    static final Line FLAT_NECK = Line.of(13, 0, 9, 11, 0, 15).mirrored();
    static final Line FLAT_BACK_NECK = Line.of(13, 0, 7, 3.5, 0, 4).mirrored();
    static final List<Line> FLAT_SEAMS =
            List.of(Line.of(45, 0).straight(46, 42), Line.of(-45, 0).straight(-46, 42));

    /** Two legs of a garment lying flat, waist at y = 0. */
    static final Line FLAT_LEGS = Line.of(0, 0)
            .straight(36, 0, 40, 40, 40, 150, 8, 150, 2, 62)
            .then(0, 58)
            .mirrored();

    private Figures() {}
}
