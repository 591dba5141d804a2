package campcloth.store;

import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.journey.WholeService;
import campcloth.supply.ListOrder;
import campcloth.supply.ListReader;
import campcloth.supply.ListReport;
import campcloth.supply.ListWriter;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.OnBadRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.springframework.beans.factory.annotation.Autowired;

/** Lists of one supplier, whom no other test knows, and what is kept of them. */
@WholeService
abstract class TakenLists {

    static final String HEAD = "key,name,composition,weight g/m2,width cm\n";

    @Autowired
    SupplierLists lists;

    @Autowired
    Cloths cloths;

    @Autowired
    private ListReader reader;

    final String supplier = "Mill " + UUID.randomUUID();

    ListReport take(String list) throws IOException {
        return take(list, OnBadRow.REFUSE_ALL, false);
    }

    ListReport take(String list, OnBadRow onBadRow, boolean dryRun) throws IOException {
        return take(list, new SupplierLists.Order(supplier, onBadRow, dryRun));
    }

    ListReport take(String list, SupplierLists.Order order) throws IOException {
        ListOrder how = new ListOrder(order.supplier(), Optional.empty(), Optional.empty());
        return lists.take(
                order,
                rows -> reader.read(new ByteArrayInputStream(list.getBytes(StandardCharsets.UTF_8)), how, rows),
                SupplierLists.Watcher.NONE);
    }

    /** What is kept of the supplier's list, by its keys. */
    Map<String, KeptCloth> kept() {
        Map<String, KeptCloth> kept = new HashMap<>();
        for (ListWriter.Line line : lines()) {
            if (line.supplier().equals(Optional.of(supplier))) {
                kept.put(line.key().orElseThrow(), line.kept());
            }
        }
        return kept;
    }

    KeptCloth kept(String key) {
        return Objects.requireNonNull(kept().get(key));
    }

    /** Of all cloths that there are, whoever made them. */
    List<ListWriter.Line> lines() {
        List<ListWriter.Line> lines = new ArrayList<>();
        lists.each(EnumSet.allOf(KeptCloth.Origin.class), lines::add);
        return lines;
    }
}
