package campcloth.pages.lists;

import campcloth.supply.ListOrder;
import campcloth.supply.SupplierLists.OnBadRow;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;

/** What is asked beside a list. */
public class ImportForm {

    public @Nullable String supplier;
    public @Nullable String currency;
    public OnBadRow onBadRow = OnBadRow.SKIP;
    public @Nullable MultipartFile file;

    ListOrder order() {
        return new ListOrder(supplier == null ? "" : supplier, Optional.ofNullable(currency), Optional.empty());
    }
}
