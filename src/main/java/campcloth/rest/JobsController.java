package campcloth.rest;

import campcloth.job.JobKind;
import campcloth.job.Jobs;
import campcloth.job.Jobs.Cancelling;
import campcloth.job.KeptJob;
import campcloth.job.Notation;
import campcloth.supply.AskedList;
import campcloth.supply.ListJobs;
import campcloth.supply.SupplierLists;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Jobs that were handed in: looked at, cancelled. */
@RestController
@RequestMapping("/api/jobs")
@Tag(name = "Jobs", description = "What takes longer than one waits for: handed in, looked at later, cancelled")
class JobsController {

    private static final int MOST_LISTED = 100;

    /** Jobs in a list. */
    @Schema(name = "Jobs", description = "One's own jobs, newest first, without what came of them")
    record JobsAnswer(List<JobAnswer> jobs) {}

    private final Jobs jobs;
    private final ListJobs lists;
    private final Notation notation;

    JobsController(Jobs jobs, ListJobs lists, Notation notation) {
        this.jobs = jobs;
        this.lists = lists;
        this.notation = notation;
    }

    @GetMapping
    @Operation(operationId = "listJobs", summary = "The newest 100 of one's own jobs, newest first")
    JobsAnswer all() {
        return new JobsAnswer(
                jobs.latest(MOST_LISTED).stream().map(JobAnswer::of).toList());
    }

    @GetMapping("/{id}")
    @Operation(
            operationId = "getJob",
            summary = "A job: how far it has come, and what came of it",
            description = "Kept for seven days after its end.")
    JobAnswer one(@PathVariable String id) {
        KeptJob kept = jobs.byId(id).orElseThrow(() -> new Missing("job", id));
        return JobAnswer.of(kept.job(), results(kept));
    }

    @DeleteMapping("/{id}")
    @ResponseStatus(HttpStatus.ACCEPTED)
    @Operation(
            operationId = "cancelJob",
            summary = "Asks for the end of a job: one that waits ends at once, one that runs soon",
            description =
                    "A list that is cancelled leaves nothing; one that was written already is done. A cutting plan's search"
                            + " runs to its end, and its plan is not kept.")
    @ApiResponse(responseCode = "202", description = "The job as it is now", useReturnTypeSchema = true)
    JobAnswer cancel(@PathVariable String id) {
        Cancelling came = jobs.cancel(id);
        if (came instanceof Cancelling.Asked asked) {
            return JobAnswer.of(asked.job());
        }
        if (came instanceof Cancelling.Ended ended) {
            throw new JobEnded(ended.job());
        }
        throw new Missing("job", id);
    }

    private JobAnswer.Results results(KeptJob kept) {
        Optional<String> result = kept.result();
        if (result.isEmpty()) {
            return JobAnswer.Results.NONE;
        }
        JobKind kind = kept.job().kind();
        return switch (kind) {
            case LAYOUT -> new JobAnswer.Results(notation.read(result.get(), LayoutAnswer.class), null, null);
            case CUTTING_PLAN -> new JobAnswer.Results(null, null, notation.read(result.get(), String.class));
            case LIST -> new JobAnswer.Results(null, report(kept), null);
        };
    }

    private @Nullable ListReportBody report(KeptJob kept) {
        return lists.list(kept)
                .flatMap(list -> list.report().map(report -> ListReportBody.of(order(list.asked()), report)))
                .orElse(null);
    }

    private static SupplierLists.Order order(AskedList asked) {
        return new SupplierLists.Order(asked.how().supplier(), asked.onBadRow(), asked.dryRun());
    }
}
