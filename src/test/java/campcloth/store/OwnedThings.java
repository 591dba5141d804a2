package campcloth.store;

import campcloth.access.NotAllowed;
import campcloth.access.ThingKind;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.errand.Errand;
import campcloth.errand.ErrandSamples;
import campcloth.errand.Errands;
import campcloth.event.Events;
import campcloth.garment.SewnBy;
import campcloth.plan.CuttingPlan;
import campcloth.plan.Plans;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;
import java.util.function.BooleanSupplier;

/** Things of every kind, made, read and changed alike, for whoever asks at the moment. */
final class OwnedThings {

    /** How it went. */
    enum Outcome {
        DONE,
        NOT_ALLOWED,
        MISSING
    }

    private static final Instant WHEN = Instant.parse("2027-05-02T09:30:00Z");
    private static final CuttingPlan PLAN = ErrandSamples.plan(ErrandSamples.tunic(WHEN), true, SewnBy.MACHINE);

    private final Cloths cloths;
    private final Events events;
    private final Plans plans;
    private final Errands errands;

    OwnedThings(Cloths cloths, Events events, Plans plans, Errands errands) {
        this.cloths = cloths;
        this.events = events;
        this.plans = plans;
        this.errands = errands;
    }

    static Cloth cloth(String name) {
        return ErrandSamples.anyCloth().cloth().named(name, "");
    }

    static Errand sheet(String planId) {
        Errand errand = ErrandSamples.tunic(WHEN);
        return new Errand(errand.title(), errand.event(), errand.garment(), errand.cloth(), planId, WHEN);
    }

    String add(ThingKind kind) {
        return switch (kind) {
            case CLOTH -> cloths.add(cloth("Linen of somebody")).id();
            case EVENT -> events.add(ErrandSamples.camp()).id();
            case CUTTING_PLAN -> plans.add(PLAN).id();
            case SHEET -> errands.add(sheet(plans.add(PLAN).id())).id();
        };
    }

    boolean isRead(ThingKind kind, String id) {
        return switch (kind) {
            case CLOTH ->
                cloths.byId(id).isPresent() && !cloths.byIds(Set.of(id)).isEmpty();
            case EVENT ->
                events.byId(id).isPresent()
                        && events.rulesAt(id, 0).isPresent()
                        && events.rulesHistory(id, 5).isPresent();
            case CUTTING_PLAN -> plans.byId(id).isPresent();
            case SHEET -> errands.byId(id).isPresent();
        };
    }

    /** Ids of all that is listed. */
    Set<String> listed(ThingKind kind) {
        Set<String> ids = new HashSet<>();
        switch (kind) {
            case CLOTH -> cloths.matching(ClothSearch.EVERYTHING).forEach(kept -> ids.add(kept.id()));
            case EVENT -> events.each(kept -> ids.add(kept.id()));
            case CUTTING_PLAN -> plans.each(kept -> ids.add(kept.id()));
            case SHEET -> errands.each(kept -> ids.add(kept.id()));
        }
        return ids;
    }

    /** Changes it, or removes it where such things never change; a plan does neither. */
    Outcome change(ThingKind kind, String id) {
        return switch (kind) {
            case CLOTH ->
                outcome(() -> cloths.replace(id, 0, cloth("Linen of somebody else")) instanceof Cloths.Change.Done);
            case EVENT ->
                outcome(() -> events.replace(id, 0, ErrandSamples.camp().at(52)) instanceof Events.Change.Done);
            case SHEET -> remove(kind, id);
            case CUTTING_PLAN -> throw new IllegalArgumentException("plans stay as they are");
        };
    }

    Outcome remove(ThingKind kind, String id) {
        return switch (kind) {
            case CLOTH ->
                outcome(() -> cloths.byId(id)
                                .map(kept -> cloths.remove(id, kept.version()))
                                .orElseGet(() -> cloths.remove(id, 0))
                        instanceof Cloths.Change.Done);
            case EVENT ->
                outcome(() -> events.byId(id)
                                .map(kept -> events.remove(id, kept.version()))
                                .orElseGet(() -> events.remove(id, 0))
                        instanceof Events.Change.Done);
            case SHEET -> outcome(() -> errands.remove(id));
            case CUTTING_PLAN -> throw new IllegalArgumentException("plans stay where they are");
        };
    }

    static Outcome outcome(BooleanSupplier done) {
        try {
            return done.getAsBoolean() ? Outcome.DONE : Outcome.MISSING;
        } catch (NotAllowed refused) {
            return Outcome.NOT_ALLOWED;
        }
    }
}
