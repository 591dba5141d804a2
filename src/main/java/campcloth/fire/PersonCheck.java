package campcloth.fire;

import campcloth.event.RuleConditions;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What only a person can judge: never passed here. */
final class PersonCheck {

    private PersonCheck() {}

    static List<Finding> findings(RuleConditions asked) {
        return Stream.of(
                        sentence(
                                "A treatment is asked for",
                                asked.requiredTreatment(),
                                "Show what was done to the cloth"),
                        sentence("A report or mark is asked for", asked.requiredCertificate(), "Bring it"),
                        sentence("A person must look at this", asked.askAbout(), "Ask"))
                .flatMap(Optional::stream)
                .map(Finding::ask)
                .toList();
    }

    private static Optional<String> sentence(String what, Optional<String> text, String remedy) {
        return text.map(words ->
                what + ": \"" + words + "\". " + remedy + ": whose rule it is decides, nothing here can tell.");
    }
}
