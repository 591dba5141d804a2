package campcloth.door;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Tells why the service may not start, and the way out, in place of a stack trace. */
class NotStartedAnalyzer extends AbstractFailureAnalyzer<NotStarted> {

    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, NotStarted cause) {
        return new FailureAnalysis(cause.because(), cause.remedy(), cause);
    }
}
