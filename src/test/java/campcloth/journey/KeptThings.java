package campcloth.journey;

import static org.awaitility.Awaitility.await;

import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Role;
import campcloth.access.ShareKey;
import campcloth.access.Shares;
import campcloth.access.ThingKind;
import campcloth.access.Tokens;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.MarkPair;
import campcloth.cloth.SwatchSamples;
import campcloth.cloth.Swatches;
import campcloth.errand.Errand;
import campcloth.errand.ErrandSamples;
import campcloth.errand.Errands;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.garment.SewnBy;
import campcloth.job.JobKind;
import campcloth.job.Jobs;
import campcloth.job.NewJob;
import campcloth.plan.CuttingPlan;
import campcloth.plan.Plans;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;

/** Things of every kind that accounts keep, made straight in the stores for whom they shall belong to, and how they stand. */
final class KeptThings {

    private static final Instant WHEN = Instant.parse("2027-05-02T09:30:00Z");

    private static final Duration PATIENCE = Duration.ofMinutes(2);

    /** Outlines whose search goes on while it is looked at and cancelled. */
    private static final String LONG_SEARCH = """
            {"widthCm": 140, "seconds": 60, "pieces": [{"name": "front", "count": 7,
             "outlineCm": [[0, 0], [70, 0], [50, 95], [0, 80]]}]}""";

    /** What is kept for somebody. */
    enum Kind {
        CLOTH(Optional.of(ThingKind.CLOTH)),
        EVENT(Optional.of(ThingKind.EVENT)),
        CUTTING_PLAN(Optional.of(ThingKind.CUTTING_PLAN)),
        SHEET(Optional.of(ThingKind.SHEET)),
        /** Of a cloth, to which its access belongs. */
        SWATCH(Optional.of(ThingKind.CLOTH)),
        JOB(Optional.empty()),
        TOKEN(Optional.empty()),
        ACCOUNT(Optional.empty());

        private final Optional<ThingKind> shared;

        Kind(Optional<ThingKind> shared) {
            this.shared = shared;
        }

        Role keeper() {
            return shared.orElseThrow().keeper();
        }

        /** In which ways such a thing can belong. */
        List<Whose> ways() {
            if (shared.isPresent()) {
                return List.of(Whose.values());
            }
            return this == ACCOUNT
                    ? List.of(Whose.PRIVATE, Whose.NOWHERE)
                    : List.of(Whose.OWN, Whose.PRIVATE, Whose.NOWHERE);
        }
    }

    /**
     * Something kept.
     *
     * @param within the id of the cloth, of a swatch; else the same as the id
     * @param key of its link
     */
    record Thing(Kind kind, String id, String within, Asker owner, Optional<ShareKey> key) {}

    private final Cloths cloths;
    private final Events events;
    private final Plans plans;
    private final Errands errands;
    private final Swatches swatches;
    private final Jobs jobs;
    private final Tokens tokens;
    private final Accounts accounts;
    private final Shares shares;
    private final Askers askers;
    private final HostedAccounts people;
    private final CuttingPlan plan = ErrandSamples.plan(ErrandSamples.tunic(WHEN), true, SewnBy.MACHINE);

    KeptThings(
            Cloths cloths,
            Events events,
            Plans plans,
            Errands errands,
            Swatches swatches,
            Jobs jobs,
            Tokens tokens,
            Accounts accounts,
            Shares shares,
            Askers askers,
            HostedAccounts people) {
        this.cloths = cloths;
        this.events = events;
        this.plans = plans;
        this.errands = errands;
        this.swatches = swatches;
        this.jobs = jobs;
        this.tokens = tokens;
        this.accounts = accounts;
        this.shares = shares;
        this.askers = askers;
        this.people = people;
    }

    /** Makes one that belongs to that account; common, where that is nobody. */
    Thing made(Kind kind, Optional<Account> owner, boolean isShared) {
        Asker asker = owner.map(one -> Asker.of(one.id(), Set.of(Role.MAKER))).orElse(Asker.LOCAL);
        return askers.as(asker, () -> {
            Thing thing = made(kind, asker);
            return isShared
                    ? new Thing(
                            kind,
                            thing.id(),
                            thing.within(),
                            asker,
                            shares.share(kind.shared.orElseThrow(), thing.within()))
                    : thing;
        });
    }

    /** One that was never there. */
    static Thing nowhere(Kind kind) {
        String id = UUID.randomUUID().toString();
        return new Thing(
                kind, id, kind == Kind.SWATCH ? UUID.randomUUID().toString() : id, Asker.LOCAL, Optional.empty());
    }

    private Thing made(Kind kind, Asker asker) {
        String id = switch (kind) {
            case CLOTH -> cloth();
            case EVENT -> events.add(ErrandSamples.camp()).id();
            case CUTTING_PLAN -> plans.add(plan).id();
            case SHEET -> sheet();
            case SWATCH -> "";
            case JOB -> job();
            case TOKEN -> token(asker.account().orElseThrow());
            case ACCOUNT -> account();
        };
        if (kind == Kind.SWATCH) {
            String within = cloth();
            Swatches.Outcome told =
                    swatches.add(within, SwatchSamples.warp(SwatchSamples.DAY, new MarkPair(50, List.of(47.3))));
            return new Thing(kind, ((Swatches.Outcome.Done) told).swatch().id(), within, asker, Optional.empty());
        }
        return new Thing(kind, id, id, asker, Optional.empty());
    }

    /** With a word in its name that no other has, so that it is found among any number of them. */
    private String cloth() {
        String name = "Linen of somebody " + UUID.randomUUID().toString().replace("-", "");
        return cloths.add(ErrandSamples.anyCloth().cloth().named(name, "")).id();
    }

    /** Made now, so that it stands first where the latest are listed. */
    private String sheet() {
        Errand errand = ErrandSamples.tunic(WHEN);
        return errands.add(new Errand(
                        errand.title(),
                        errand.event(),
                        errand.garment(),
                        errand.cloth(),
                        plans.add(plan).id(),
                        Instant.now().truncatedTo(ChronoUnit.MILLIS)))
                .id();
    }

    private String job() {
        try {
            return jobs.add(NewJob.of(JobKind.LAYOUT, LONG_SEARCH)).id().toString();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private String token(UUID owner) {
        String name = UUID.randomUUID().toString();
        tokens.make(owner, name, Duration.ofDays(1));
        return tokens.of(owner).stream()
                .filter(token -> token.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id()
                .toString();
    }

    private String account() {
        return people.account("k-" + UUID.randomUUID(), Set.of(Role.MAKER)).id().toString();
    }

    /** All that its owner can tell of it, to be compared; the search of a job goes on by itself and is left out. */
    String state(Thing thing) {
        Supplier<Object> look = () -> switch (thing.kind()) {
            case CLOTH -> List.of(cloths.byId(thing.id()), shares.of(ThingKind.CLOTH, thing.id()));
            case EVENT -> List.of(events.byId(thing.id()), shares.of(ThingKind.EVENT, thing.id()));
            case CUTTING_PLAN -> List.of(plans.byId(thing.id()), shares.of(ThingKind.CUTTING_PLAN, thing.id()));
            case SHEET -> List.of(errands.byId(thing.id()), shares.of(ThingKind.SHEET, thing.id()));
            case SWATCH -> List.of(cloths.byId(thing.within()), swatches.of(thing.within()));
            case JOB -> jobs.byId(thing.id()).map(kept -> kept.job().cancelAsked());
            case TOKEN ->
                tokens.of(thing.owner().account().orElseThrow()).stream()
                        .filter(token -> token.id().toString().equals(thing.id()))
                        .toList();
            case ACCOUNT ->
                List.of(accounts.byId(UUID.fromString(thing.id())), accounts.passwordHash(UUID.fromString(thing.id())));
        };
        return askers.as(thing.owner(), look).toString();
    }

    /** Its version, where it is there and has one. */
    long version(Thing thing) {
        Supplier<Long> look = () -> switch (thing.kind()) {
            case CLOTH -> cloths.byId(thing.id()).map(KeptCloth::version).orElse(0L);
            case EVENT -> events.byId(thing.id()).map(KeptEvent::version).orElse(0L);
            case ACCOUNT ->
                accounts.byId(UUID.fromString(thing.id())).map(Account::version).orElse(0L);
            default -> 0L;
        };
        return askers.as(thing.owner(), look);
    }

    /** Asks for the end of something that works by itself. */
    void cancel(Thing job) {
        askers.as(job.owner(), () -> jobs.cancel(job.id()));
    }

    /** Ends them, and waits until they have ended: whoever looks twice afterwards sees the same. */
    void end(Collection<Thing> working) {
        working.forEach(this::cancel);
        await("the end of the jobs")
                .pollInSameThread()
                .atMost(PATIENCE)
                .until(() -> working.stream().allMatch(this::hasEnded));
    }

    private boolean hasEnded(Thing job) {
        return askers.as(job.owner(), () -> jobs.byId(job.id()))
                .filter(kept -> !kept.job().state().hasEnded())
                .isEmpty();
    }
}
