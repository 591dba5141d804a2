package campcloth.event;

import campcloth.figure.Refused;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a rule stands and for how long. Nothing here ever makes a rule milder.
 *
 * @param source where it can be read: a document, a page, a board at the gate
 * @param issuedOn the day it was issued
 * @param edition which edition it is taken from
 * @param validFrom first day of its term
 * @param validUntil last day of its term
 */
public record Provenance(
        Optional<String> source,
        Optional<LocalDate> issuedOn,
        Optional<String> edition,
        Optional<LocalDate> validFrom,
        Optional<LocalDate> validUntil) {

    /** Nobody said. */
    public static final Provenance UNTOLD =
            new Provenance(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Longest source, characters. */
    public static final int LONGEST_SOURCE = 500;

    /** Longest name of an edition, characters. */
    public static final int LONGEST_EDITION = 100;

    public Provenance {
        source.ifPresent(text -> WrittenText.check("source", text, LONGEST_SOURCE));
        edition.ifPresent(text -> WrittenText.check("edition", text, LONGEST_EDITION));
        if (validFrom.isPresent() && validUntil.isPresent() && validUntil.get().isBefore(validFrom.get())) {
            throw Refused.of(
                    "validUntil",
                    "is " + validUntil.get() + ", before validFrom",
                    "give " + validFrom.get() + " or a later day");
        }
    }

    public boolean hasTerm() {
        return validFrom.isPresent() || validUntil.isPresent();
    }

    /** Source, edition and day of issue in words; empty where nobody told any. */
    public Optional<String> cited() {
        List<String> parts = new ArrayList<>();
        source.ifPresent(parts::add);
        edition.ifPresent(text -> parts.add("edition " + text));
        issuedOn.ifPresent(day -> parts.add("issued on " + day));
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", parts));
    }
}
