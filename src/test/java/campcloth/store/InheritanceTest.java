package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Asker;
import campcloth.access.Inheritance;
import campcloth.access.Role;
import campcloth.access.ThingKind;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.KeptCloth;
import campcloth.demo.Demo;
import campcloth.demo.DemoThing.Standing;
import campcloth.journey.WholeService;
import campcloth.supply.ListOrder;
import campcloth.supply.ListReader;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

/** The first account gets what was made before it; catalogue, lists and demo stay common. */
@WholeService
@TestPropertySource(properties = {"campcloth.demo=true", "a.database=for heirs"})
@DirtiesContext
class InheritanceTest extends KeptThings {

    private static final UUID HEIR = new UUID(8, 1);

    @Autowired
    private Inheritance inheritance;

    @Autowired
    private Demo demo;

    @Autowired
    private SupplierLists lists;

    @Autowired
    private ListReader reader;

    @Test
    void whatWasMadeBeforeIsTheHeirsAndTheRestStaysCommon() throws Exception {
        lists.take(
                new SupplierLists.Order("Wendlow Mill", OnBadRow.SKIP, false),
                rows -> reader.read(
                        new ByteArrayInputStream(
                                "key,name,composition\nA,Listed linen,100% linen\n".getBytes(StandardCharsets.UTF_8)),
                        new ListOrder("Wendlow Mill", Optional.empty(), Optional.empty()),
                        rows),
                SupplierLists.Watcher.NONE);
        Set<String> before = ids();
        for (ThingKind kind : ThingKind.values()) {
            String id = things.add(kind);
            inheritance.leaveTo(HEIR);
            assertThat(shares.of(kind, id)).as(kind + " for all").isEmpty();
            Asker heir = Asker.of(HEIR, Set.of(Role.MAKER));
            assertThat(askers.as(heir, () -> shares.of(kind, id)).orElseThrow().own())
                    .as(kind + " for the heir")
                    .isTrue();
            assertThat(askers.as(heir, () -> things.listed(kind)).contains(id)).isTrue();
            assertThat(askers.as(Asker.of(new UUID(8, 2), Set.of(Role.MAKER)), () -> things.isRead(kind, id)))
                    .isFalse();
        }
        assertThat(ids()).isEqualTo(before);
        assertThat(before).hasSizeGreaterThan(50);
        assertThat(demo.things()).hasSize(4).allMatch(thing -> thing.standing() == Standing.AS_PUT_IN);
        assertThat(askers.as(Asker.of(HEIR, Set.of(Role.MAKER)), () -> demo.things()))
                .isEqualTo(demo.things());
    }

    private Set<String> ids() {
        return cloths.matching(ClothSearch.EVERYTHING).stream()
                .map(KeptCloth::id)
                .collect(Collectors.toSet());
    }
}
