package campcloth.layout.drawing;

/** A rectangle on paper, in mm from the upper left. */
record Box(double left, double top, double width, double height) {

    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    double middleX() {
        return left + width / 2;
    }

    double middleY() {
        return top + height / 2;
    }

    boolean meets(Box other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }
}
