package campcloth.journey;

import campcloth.access.Account;
import campcloth.access.Asker;
import campcloth.access.ShareKey;
import campcloth.journey.KeptThings.Kind;
import campcloth.journey.KeptThings.Thing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A thing for each way in which it can belong to somebody, kept until somebody was let to change it. */
final class ThingsOfAll {

    private record Cell(Kind kind, Optional<Account> owner, boolean isShared) {}

    private final KeptThings things;
    private final HostedAccounts accounts;
    private final Map<Cell, Thing> made = new HashMap<>();
    private final List<Thing> working = new ArrayList<>();

    ThingsOfAll(KeptThings things, HostedAccounts accounts) {
        this.things = things;
        this.accounts = accounts;
    }

    Account account(Knocker who) {
        return accounts.account(who.accountName(), who.roles());
    }

    Thing of(Kind kind, Knocker who, Whose whose) {
        return whose == Whose.NOWHERE ? KeptThings.nowhere(kind) : made(cell(kind, who, whose));
    }

    private Thing made(Cell cell) {
        return made.computeIfAbsent(cell, one -> things.made(one.kind(), one.owner(), one.isShared()));
    }

    private Cell cell(Kind kind, Knocker who, Whose whose) {
        Optional<Account> owner = switch (whose) {
            case OWN -> Optional.of(account(who));
            case COMMON, NOWHERE -> Optional.empty();
            default -> Optional.of(accounts.otherMaker());
        };
        return new Cell(kind, owner, whose.isShared());
    }

    /** Somebody changed it; the next who asks gets another. */
    void used(Thing thing, Knocker who, Whose whose) {
        made.remove(cell(thing.kind(), who, whose));
        if (thing.kind() == Kind.JOB) {
            working.add(thing);
        }
    }

    /** A job that somebody handed in: it need not be worked on. */
    void handedIn(String job, Knocker who) {
        Account account = account(who);
        Thing thing = new Thing(Kind.JOB, job, job, Asker.of(account.id(), account.roles()), Optional.empty());
        things.cancel(thing);
        working.add(thing);
    }

    String state(Thing thing) {
        return things.state(thing);
    }

    /** The version that its owner would send back to change it. */
    String tag(Thing thing) {
        return "\"" + things.version(thing) + "\"";
    }

    /** The key that is shown with the question; empty where none is. */
    String shown(Thing thing, Whose whose) {
        return switch (whose) {
            case SHARED_WITH_ITS_KEY -> thing.key().map(ShareKey::text).orElseThrow();
            case PRIVATE_WITH_A_STRANGE_KEY ->
                made(new Cell(thing.kind(), Optional.of(accounts.otherMaker()), true))
                        .key()
                        .map(ShareKey::text)
                        .orElseThrow();
            default -> "";
        };
    }

    /** Ends what still works, so that it takes no place from whoever asks next. */
    void end() {
        made.values().stream().filter(thing -> thing.kind() == Kind.JOB).forEach(working::add);
        made.keySet().removeIf(cell -> cell.kind() == Kind.JOB);
        if (!working.isEmpty()) {
            things.end(working);
            working.clear();
        }
    }
}
