package campcloth.rest;

import campcloth.access.Askers;
import campcloth.access.Holding;
import campcloth.garment.Sizes;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.Jobs;
import campcloth.job.NewJob;
import campcloth.job.Notation;
import campcloth.plan.CuttingPlanner;
import campcloth.supply.AskedList;
import campcloth.supply.ListJobs;
import campcloth.supply.ListOrder;
import campcloth.supply.Spool;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.validation.Valid;
import java.io.IOException;
import java.net.URI;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Takes jobs in: the same questions as at once, with more time. What cannot be used is refused here already, as far as it shows. */
@RestController
@Tag(name = "Jobs")
class JobHandingController {

    private static final String SOON_SECONDS = "1";
    private static final String TAKEN_IN = "The job as it was taken in; Location says where to look at it";

    private final Jobs jobs;
    private final ListJobs lists;
    private final ClothsToCut cloths;
    private final Sizes sizes;
    private final Notation notation;
    private final Askers askers;

    JobHandingController(Jobs jobs, ListJobs lists, ClothsToCut cloths, Sizes sizes, Notation notation, Askers askers) {
        this.jobs = jobs;
        this.lists = lists;
        this.cloths = cloths;
        this.sizes = sizes;
        this.notation = notation;
        this.askers = askers;
    }

    @PostMapping("/api/jobs/layouts")
    @Operation(
            operationId = "handInLayout",
            summary = "Hands in outlines to be laid, with up to 120 seconds of effort",
            description = "The body is that of POST /api/layouts. The progress tells the length found so far.")
    @ApiResponse(responseCode = "202", description = TAKEN_IN, useReturnTypeSchema = true)
    ResponseEntity<JobAnswer> layout(@Valid @RequestBody LayoutRequest request) throws IOException {
        request.checkForJob();
        return takenIn(jobs.add(NewJob.of(JobKind.LAYOUT, notation.write(request))));
    }

    @PostMapping("/api/jobs/cutting-plans")
    @Operation(
            operationId = "handInCuttingPlan",
            summary = "Hands in a cutting plan, with up to 10 seconds of effort for each of its layouts",
            description = "The body is that of POST /api/cutting-plans. The plan is kept; planUrl says where.")
    @ApiResponse(responseCode = "202", description = TAKEN_IN, useReturnTypeSchema = true)
    ResponseEntity<JobAnswer> plan(
            @Valid @RequestBody CuttingPlanRequest request,
            @Parameter(description = "time in s for each layout of the plan, about, 0.1 to 10")
                    @RequestParam(defaultValue = "3")
                    double secondsALayout)
            throws IOException {
        CuttingPlanWork.Asked asked = new CuttingPlanWork.Asked(request, secondsALayout);
        asked.check();
        CuttingPlanner.check(request.order(cloths.of(request.choice()), sizes));
        Holding.madeBy(askers.now());
        return takenIn(jobs.add(NewJob.of(JobKind.CUTTING_PLAN, notation.write(asked))));
    }

    @PostMapping(value = BodyLimit.LISTS_AS_JOBS, consumes = ListQuery.CSV)
    @Operation(
            operationId = "handInList",
            summary = "Hands in a supplier's list, to be taken over or looked at",
            description =
                    "The body and the parameters are those of POST /api/cloths/import. The report comes with the job.",
            requestBody =
                    @io.swagger.v3.oas.annotations.parameters.RequestBody(
                            required = true,
                            content = @Content(mediaType = ListQuery.CSV, schema = @Schema(ref = "SupplierList"))))
    @ApiResponse(responseCode = "202", description = TAKEN_IN, useReturnTypeSchema = true)
    ResponseEntity<JobAnswer> list(HttpServletRequest request, @ParameterObject ListQuery query)
            throws IOException, HttpMediaTypeNotSupportedException, MissingServletRequestParameterException {
        ListOrder how = query.how();
        try (Spool spool = new Spool()) {
            ListQuery.spool(request, spool);
            return takenIn(lists.add(new AskedList("", how, query.badRows(), query.isDryRun()), spool));
        }
    }

    private static ResponseEntity<JobAnswer> takenIn(Job job) {
        return ResponseEntity.accepted()
                .location(URI.create("/api/jobs/" + job.id()))
                .header(HttpHeaders.RETRY_AFTER, SOON_SECONDS)
                .body(JobAnswer.of(job));
    }
}
