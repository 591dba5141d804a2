package campcloth.rest;

import campcloth.job.Failure;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobState;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A job, and what came of it once it is done. */
@Schema(name = "Job", description = "Work that takes long, by itself")
record JobAnswer(
        String id,
        JobKind kind,
        JobState state,

        @Schema(description = "how far it has come: numbers by name, each with its unit in the name")
        Map<String, Double> progress,

        @Schema(description = "how often it was begun; given up after the third time that went wrong")
        int attempts,

        @Schema(description = "whether its end was asked for")
        boolean cancelAsked,

        Instant madeAt,
        @Nullable Instant startedAt,
        @Nullable Instant endedAt,
        @Schema(description = "why it failed") @Nullable FailureBody failure,

        @Schema(description = "of a layout that is done") @Nullable
        LayoutAnswer layout,

        @Schema(description = "of a list that was read; whether it was taken over says its field written") @Nullable
        ListReportBody report,

        @Schema(description = "address of the plan that is kept, of a cutting plan that is done") @Nullable
        String planUrl) {

    /** Why a job failed. */
    @Schema(name = "JobFailure")
    record FailureBody(
            String reason,

            @Schema(description = "what of the request cannot be used; empty where that is not the reason")
            List<FieldError> errors) {

        static FailureBody of(Failure failure) {
            return new FailureBody(
                    failure.reason(),
                    failure.refusals().stream().map(FieldError::of).toList());
        }
    }

    /** What came of a job, by its kind; all empty while nothing did. */
    record Results(
            @Nullable LayoutAnswer layout,
            @Nullable ListReportBody report,
            @Nullable String planUrl) {

        static final Results NONE = new Results(null, null, null);
    }

    static JobAnswer of(Job job) {
        return of(job, Results.NONE);
    }

    static JobAnswer of(Job job, Results results) {
        return new JobAnswer(
                job.id().toString(),
                job.kind(),
                job.state(),
                new TreeMap<>(job.progress()),
                job.attempts(),
                job.cancelAsked(),
                job.madeAt(),
                job.startedAt().orElse(null),
                job.endedAt().orElse(null),
                job.failure().map(FailureBody::of).orElse(null),
                results.layout(),
                results.report(),
                results.planUrl());
    }
}
