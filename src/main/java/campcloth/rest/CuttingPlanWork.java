package campcloth.rest;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.garment.Sizes;
import campcloth.job.JobKind;
import campcloth.job.JobRun;
import campcloth.job.LayoutGate;
import campcloth.job.Notation;
import campcloth.job.Work;
import campcloth.layout.Progress;
import campcloth.plan.CuttingOrder;
import campcloth.plan.CuttingPlan;
import campcloth.plan.CuttingPlanner;
import campcloth.plan.Plans;
import org.springframework.stereotype.Component;

/** Does a job about a cutting plan. Its plan gets an id that follows from the job's, so that it is kept once. */
@Component
class CuttingPlanWork implements Work {

    private static final Range SECONDS = new Range("secondsALayout", 0.1, 10, "s");

    /** What is asked. */
    record Asked(CuttingPlanRequest plan, double secondsALayout) {

        void check() {
            SECONDS.check(secondsALayout);
        }
    }

    private final LayoutGate gate;
    private final ClothsToCut cloths;
    private final Sizes sizes;
    private final Plans plans;
    private final Notation notation;

    CuttingPlanWork(LayoutGate gate, ClothsToCut cloths, Sizes sizes, Plans plans, Notation notation) {
        this.gate = gate;
        this.cloths = cloths;
        this.sizes = sizes;
        this.plans = plans;
        this.notation = notation;
    }

    @Override
    public JobKind kind() {
        return JobKind.CUTTING_PLAN;
    }

    @Override
    public String run(String request, JobRun run) {
        Asked asked = notation.read(request, Asked.class);
        CuttingOrder order = order(asked.plan());
        CuttingPlanner planner = new CuttingPlanner(asked.secondsALayout());
        CuttingPlan plan = gate.inTime(run::goOn, () -> planner.plan(order, new Ended(run)));
        run.goOn();
        return notation.write("/api/cutting-plans/" + plans.add(plan).id());
    }

    /** Listens for the end that was asked for. The layouts of a plan are many: their lengths would tell nobody how far it is. */
    private record Ended(JobRun run) implements Progress {

        @Override
        public void better(double lengthCm, double usedPercent) {}

        @Override
        public boolean isStopped() {
            return run.isStopped();
        }
    }

    private CuttingOrder order(CuttingPlanRequest request) {
        try {
            return request.order(cloths.of(request.choice()), sizes);
        } catch (Missing gone) {
            throw Refused.of("clothId", "was removed since", "name a cloth that is kept");
        }
    }
}
