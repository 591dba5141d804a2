package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.Asker;
import campcloth.access.AuditEntry;
import campcloth.access.AuditTrail;
import campcloth.access.Role;
import campcloth.access.ShareKey;
import campcloth.access.ThingKind;
import campcloth.cloth.MarkPair;
import campcloth.cloth.SwatchSamples;
import campcloth.cloth.Swatches;
import campcloth.errand.ErrandSamples;
import campcloth.event.Event;
import campcloth.journey.SeveralAskers;
import campcloth.supply.ListDesk;
import campcloth.supply.ListOrder;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What others rely on is noted in the audit log with its change; what is one's own and nobody else's is not. */
@SeveralAskers
class AuditOfChangesTest extends KeptThings {

    @Autowired
    private Accounts accounts;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private Swatches swatches;

    @Autowired
    private ListDesk desk;

    @Test
    void theRulesOfACommonEventAndTheEventItself() {
        Account marshal = account(Role.MARSHAL);
        Event camp = ErrandSamples.camp();
        String id = ask(Asker.LOCAL, () -> events.add(camp)).id();
        assertThat(notes(id)).isEmpty();
        ask(marshal.asker(), () -> events.replace(id, 0, camp.withRules(List.of())));
        assertThat(notes(id)).singleElement().satisfies(entry -> {
            assertThat(entry.account()).hasValue(marshal.name().text());
            assertThat(entry.thingKind()).isEqualTo("rules");
            assertThat(entry.what()).isEqualTo("version 0 to 1");
        });
        ask(
                marshal.asker(),
                () -> events.replace(id, 1, camp.withRules(List.of()).at(52)));
        ask(marshal.asker(), () -> events.remove(id, 2));
        assertThat(notes(id))
                .extracting(entry -> entry.action() + " " + entry.thingKind())
                .containsExactly("removed event", "changed event", "changed rules");
    }

    @Test
    void theRulesOfSomebodyElsesEvent() {
        Account owner = account(Role.MAKER);
        Account marshal = account(Role.MARSHAL);
        Event camp = ErrandSamples.camp();
        String id = ask(owner.asker(), () -> events.add(camp)).id();
        ShareKey key =
                ask(owner.asker(), () -> shares.share(ThingKind.EVENT, id)).orElseThrow();
        ask(marshal.asker().with(Set.of(key)), () -> events.replace(id, 0, camp.withRules(List.of())));
        assertThat(notes(id).get(0).account()).hasValue(marshal.name().text());
        assertThat(notes(id).get(0).thingKind()).isEqualTo("rules");
    }

    @Test
    void aClothOfTheSharedCatalogueAndItsSwatches() {
        Account keeper = account(Role.KEEPER);
        String id = ask(Asker.LOCAL, () -> cloths.add(OwnedThings.cloth("Linen of everybody")))
                .id();
        ask(keeper.asker(), () -> cloths.replace(id, 0, OwnedThings.cloth("Linen of them all")));
        Swatches.Outcome told = ask(
                keeper.asker(),
                () -> swatches.add(id, SwatchSamples.warp(SwatchSamples.DAY, new MarkPair(50, List.of(47.3)))));
        String swatch = ((Swatches.Outcome.Done) told).swatch().id();
        ask(keeper.asker(), () -> swatches.remove(id, swatch));
        long version = ask(keeper.asker(), () -> cloths.byId(id)).orElseThrow().version();
        ask(keeper.asker(), () -> cloths.remove(id, version));
        assertThat(notes(id))
                .extracting(entry -> entry.action() + " " + entry.thingKind())
                .containsExactly("removed cloth", "changed cloth");
        assertThat(notes(swatch))
                .extracting(entry -> entry.action() + " " + entry.what())
                .containsExactly("removed of the cloth " + id, "made of the cloth " + id);
    }

    @Test
    void aSuppliersListInOneLine() {
        Account keeper = account(Role.KEEPER);
        String supplier = "Wendlow mill " + UUID.randomUUID();
        String list = "article number;name;composition;weight g/m2\n1;Twill;100% cotton;200\n2;Tabby;100% linen;180\n";
        ask(keeper.asker(), () -> taken(list, supplier, true));
        assertThat(notes(supplier)).as("only looked at").isEmpty();
        ask(keeper.asker(), () -> taken(list, supplier, false));
        assertThat(notes(supplier)).singleElement().satisfies(entry -> {
            assertThat(entry.account()).hasValue(keeper.name().text());
            assertThat(entry.what()).isEqualTo("2 cloths added, 0 changed");
        });
    }

    @Test
    void whatIsNobodyElsesIsNotNoted() {
        Account maker = account(Role.MAKER);
        String event =
                ask(maker.asker(), () -> events.add(ErrandSamples.camp())).id();
        String cloth = ask(maker.asker(), () -> cloths.add(OwnedThings.cloth("Linen of my own")))
                .id();
        ask(maker.asker(), () -> events.replace(event, 0, ErrandSamples.camp().withRules(List.of())));
        ask(maker.asker(), () -> cloths.replace(cloth, 0, OwnedThings.cloth("Linen of mine")));
        assertThat(notes(event)).isEmpty();
        assertThat(notes(cloth)).isEmpty();
    }

    @Test
    void whereNobodyLogsInThereIsNobodyToName() {
        String event = ask(Asker.LOCAL, () -> events.add(ErrandSamples.camp())).id();
        ask(Asker.LOCAL, () -> events.replace(event, 0, ErrandSamples.camp().withRules(List.of())));
        assertThat(notes(event)).isEmpty();
    }

    private boolean taken(String list, String supplier, boolean dryRun) {
        try (Spool spool = new Spool()) {
            byte[] bytes = list.getBytes(StandardCharsets.UTF_8);
            spool.take(new ByteArrayInputStream(bytes), ListDesk.MOST_BYTES);
            ListOrder how = new ListOrder(supplier, Optional.empty(), Optional.empty());
            return desk.take(how, OnBadRow.REFUSE_ALL, dryRun, spool, SupplierLists.Watcher.NONE)
                    .written();
        } catch (IOException broken) {
            throw new AssertionError(broken);
        }
    }

    private Account account(Role role) {
        return MadeAccounts.made(accounts, askers, Role.MAKER, role);
    }

    /** Newest first. */
    private List<AuditEntry> notes(String thing) {
        return MadeAccounts.notes(trail, thing).stream()
                .filter(entry -> !entry.action().equals("share"))
                .toList();
    }
}
