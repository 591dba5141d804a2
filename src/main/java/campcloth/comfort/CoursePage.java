package campcloth.comfort;

/**
 * The measures of a drawing of a course, in its own unit.
 *
 * @param left beside the frames, for numbers
 * @param width of the frames
 * @param right margin
 * @param frame height of a frame
 * @param gap between frames, with one line for what is in it
 * @param mostHours most marks along the hours
 * @param narrow one thing below the other, the spells by name only; for phones
 */
record CoursePage(double left, double width, double right, double frame, double gap, int mostHours, boolean narrow) {

    static final CoursePage WIDE = new CoursePage(64, 860, 26, 92, 34, 14, false);

    static final CoursePage NARROW = new CoursePage(40, 288, 12, 84, 30, 6, true);

    double wholeWidth() {
        return left + width + right;
    }

    /** Space above a frame. */
    double gapAbove(int lines) {
        return narrow ? gap + lines * CoursePanel.KEY_LINE : gap;
    }
}
