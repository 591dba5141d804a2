package campcloth.store;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Shows a broken catalogue as what to mend, not as a stack trace. */
class CatalogueBrokenAnalyzer extends AbstractFailureAnalyzer<CatalogueBroken> {

    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, CatalogueBroken broken) {
        return new FailureAnalysis(
                broken.getMessage(),
                "Mend the lines named and start again. To use the catalogue that comes with the program, leave "
                        + "CAMPCLOTH_CATALOGUE_DIR unset.",
                broken);
    }
}
