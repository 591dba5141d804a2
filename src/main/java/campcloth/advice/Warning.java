package campcloth.advice;

import campcloth.fire.FireWarning;

/**
 * Something to heed.
 *
 * @param code what it is about, one word
 * @param severity how urgent it is
 * @param text whole sentences
 */
public record Warning(String code, Severity severity, String text) {

    /** How urgent, from least to most. */
    public enum Severity {
        NOTE,
        CAUTION,
        STOP
    }

    /** What fire and rules warn of. */
    public static Warning of(FireWarning warning) {
        return new Warning(
                warning.code().name(), Severity.valueOf(warning.severity().name()), warning.text());
    }
}
