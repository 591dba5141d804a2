package campcloth.pages.sheet;

import campcloth.errand.Errand;
import campcloth.errand.ErrandSheets;
import campcloth.errand.Errands;
import campcloth.errand.KeptErrand;
import campcloth.errand.TakenEvent;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.layout.CuttingSheet;
import campcloth.pages.NotHere;
import campcloth.plan.CuttingPlan;
import campcloth.plan.KeptPlan;
import campcloth.plan.Plans;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** The sheets of kept errands, made anew each time from what was kept. */
@Component
class KeptSheets {

    private final Errands errands;
    private final Plans plans;
    private final Events events;
    private final ErrandSheets sheets;

    KeptSheets(Errands errands, Plans plans, Events events, ErrandSheets sheets) {
        this.errands = errands;
        this.plans = plans;
        this.events = events;
        this.sheets = sheets;
    }

    SheetView view(String id) {
        KeptErrand kept = kept(id);
        Errand errand = kept.errand();
        CuttingPlan plan = plan(errand);
        return new SheetView(kept.id(), errand, plan, sheets.of(errand, plan), eventNow(errand));
    }

    KeptErrand kept(String id) {
        return errands.byId(id).orElseThrow(() -> new NotHere("sheet"));
    }

    /** What its drawing shows: matched to the pattern of the cloth where it has one. */
    CuttingSheet drawn(String id) {
        return drawn(plan(kept(id).errand()));
    }

    static CuttingSheet drawn(CuttingPlan plan) {
        return plan.matchedSheet().orElseGet(plan::sheet);
    }

    private CuttingPlan plan(Errand errand) {
        return plans.byId(errand.planId()).map(KeptPlan::plan).orElseThrow(() -> new NotHere("plan"));
    }

    private SheetView.EventNow eventNow(Errand errand) {
        Optional<TakenEvent.OnFile> file = errand.event().onFile();
        if (file.isEmpty()) {
            return SheetView.EventNow.TOLD;
        }
        Optional<KeptEvent> now = events.byId(file.get().id());
        if (now.isEmpty()) {
            return SheetView.EventNow.GONE;
        }
        return now.get().version() == file.get().version() ? SheetView.EventNow.SAME : SheetView.EventNow.CHANGED;
    }
}
