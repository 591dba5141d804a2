package campcloth.pages.plan;

/** What a user wrote where no element can set it apart from the text around it: between marks of direction. */
final class Isolated {

    private static final char FIRST_STRONG = '\u2068';
    private static final char END = '\u2069';

    private Isolated() {}

    static String text(String written) {
        return FIRST_STRONG + written + END;
    }
}
