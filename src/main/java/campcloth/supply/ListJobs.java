package campcloth.supply;

import campcloth.access.Askers;
import campcloth.access.NewIds;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobState;
import campcloth.job.Jobs;
import campcloth.job.KeptJob;
import campcloth.job.NewJob;
import campcloth.job.Notation;
import java.io.IOException;
import java.util.Optional;

/** Suppliers' lists handed in as jobs: looked at, or taken over; what was looked at is taken over without being sent again. */
public final class ListJobs {

    private final Jobs jobs;
    private final Askers askers;
    private final Notation notation;
    private final NewIds ids;

    public ListJobs(Jobs jobs, Askers askers, Notation notation, NewIds ids) {
        this.jobs = jobs;
        this.askers = askers;
        this.notation = notation;
        this.ids = ids;
    }

    /**
     * A list with what was asked, and the report where there is one.
     *
     * @param isKept whether its bytes are still here
     */
    public record KeptList(Job job, AskedList asked, Optional<ListReport> report, boolean isKept) {}

    /** Hands a list in. What is only to be looked at is kept for a while when that is done. */
    public Job add(AskedList asked, Spool list) throws IOException {
        checkMayTakeLists();
        return jobs.add(new NewJob(JobKind.LIST, notation.write(asked), Optional.of(list::in), asked.dryRun()));
    }

    /** What the work would be refused for is told at once. */
    private void checkMayTakeLists() {
        if (!askers.now().is(Role.KEEPER)) {
            throw new NotAllowed(SupplierLists.KEEPERS_ONLY);
        }
    }

    public Optional<KeptList> byId(String id) {
        return jobs.byId(id).flatMap(this::list);
    }

    /** The list in a job, where the job is about one. */
    public Optional<KeptList> list(KeptJob kept) {
        if (kept.job().kind() != JobKind.LIST) {
            return Optional.empty();
        }
        return Optional.of(new KeptList(
                kept.job(),
                notation.read(kept.request(), AskedList.class),
                kept.result().map(text -> notation.read(text, ListReport.class)),
                kept.isPayloadKept()));
    }

    /**
     * Hands in what comes next: takes over what was looked at, does again what came to nothing. Asked for twice, it is handed in
     * once.
     *
     * @return nothing where the list is no longer here
     */
    public Optional<Job> goOn(KeptList list) {
        checkMayTakeLists();
        Job before = list.job();
        AskedList next = before.state() == JobState.DONE ? list.asked().takenOver() : list.asked();
        return ids.under(before.id(), () -> jobs.addOnPayloadOf(before.id().toString(), notation.write(next)));
    }
}
