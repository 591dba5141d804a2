package campcloth.store.postgres;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Ends a start that has no database with a description and an action instead of a stack trace. */
class DatabaseUnavailableAnalyzer extends AbstractFailureAnalyzer<DatabaseUnavailable> {

    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, DatabaseUnavailable cause) {
        return new FailureAnalysis(cause.happened(), cause.remedy(), cause);
    }
}
