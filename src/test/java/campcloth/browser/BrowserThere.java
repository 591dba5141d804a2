package campcloth.browser;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips what needs a browser where there is none, unless one is required: then the tests run and fail. */
final class BrowserThere implements ExecutionCondition {

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (Browsers.chromium().isPresent() || Browsers.required()) {
            return ConditionEvaluationResult.enabled("Chromium is there or has to be");
        }
        String line = "No Chromium here (looked on PATH and in CAMPCLOTH_CHROMIUM): pages are not tried in a browser. "
                + context.getDisplayName();
        System.err.println(line);
        return ConditionEvaluationResult.disabled(line);
    }
}
