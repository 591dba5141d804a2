package campcloth.event;

import campcloth.figure.Refused;

/** Checks texts that somebody wrote. */
final class WrittenText {

    private WrittenText() {}

    /** Refuses a text that is blank or longer than that many characters. */
    static void check(String field, String text, int longest) {
        if (text.isBlank() || text.length() > longest) {
            throw Refused.of(
                    field, "has " + text.strip().length() + " characters", "give 1 to " + longest + " characters");
        }
    }
}
