package campcloth.supply;

import campcloth.supply.SupplierLists.OnBadRow;

/**
 * What is asked of a list that is handed in as a job.
 *
 * @param fileName what its sender calls it; may be empty
 * @param dryRun whether to report alone
 */
public record AskedList(String fileName, ListOrder how, OnBadRow onBadRow, boolean dryRun) {

    /** The same list taken over. */
    AskedList takenOver() {
        return new AskedList(fileName, how, onBadRow, false);
    }
}
