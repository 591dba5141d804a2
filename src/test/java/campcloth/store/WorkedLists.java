package campcloth.store;

import campcloth.job.Claim;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobRun;
import campcloth.job.Work;
import campcloth.supply.AskedList;
import campcloth.supply.ListJobs;
import campcloth.supply.ListOrder;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.beans.factory.annotation.Autowired;

/** Jobs that are done as the service does them, among them lists of cloths that no other test has. */
abstract class WorkedLists extends WorkedJobs {

    @Autowired
    ListJobs lists;

    @Autowired
    List<Work> works;

    Work work(JobKind kind) {
        return works.stream().filter(work -> work.kind() == kind).findFirst().orElseThrow();
    }

    /** So many rows of a supplier that nobody knows yet. */
    Job handedIn(int rows) throws IOException {
        StringBuilder list = new StringBuilder("key,name,composition\n");
        for (int i = 0; i < rows; i++) {
            list.append('K').append(i).append(",Cloth ").append(i).append(",100% wool\n");
        }
        ListOrder how = new ListOrder("Mill " + UUID.randomUUID(), Optional.empty(), Optional.empty());
        try (Spool spool = new Spool()) {
            spool.take(new ByteArrayInputStream(list.toString().getBytes(StandardCharsets.UTF_8)), Integer.MAX_VALUE);
            return lists.add(new AskedList("list.csv", how, OnBadRow.SKIP, false), spool);
        }
    }

    /** Work on a claim that nobody disturbs. */
    class Undisturbed implements JobRun {

        private final Claim claim;

        Undisturbed(Claim claim) {
            this.claim = claim;
        }

        @Override
        public InputStream payload() throws IOException {
            return queue.payload(claim);
        }

        @Override
        public void tell(Map<String, Double> progress) {}

        @Override
        public boolean isStopped() {
            return false;
        }
    }
}
