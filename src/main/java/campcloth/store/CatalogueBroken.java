package campcloth.store;

import campcloth.figure.Fault;
import java.util.List;
import java.util.stream.Collectors;

/** The catalogue files cannot be used; says every fault with file, line, field and remedy. */
final class CatalogueBroken extends RuntimeException {

    private static final long serialVersionUID = 1L;

    CatalogueBroken(String where, List<Fault> faults) {
        super("The catalogue in " + where + " has " + faults.size()
                + (faults.size() == 1 ? " fault:\n" : " faults:\n")
                + faults.stream().map(fault -> "  - " + fault.sentence()).collect(Collectors.joining("\n")));
    }
}
