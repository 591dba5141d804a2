package campcloth.outage;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Tells outages apart with what is known of the disk: a database of our own reads only where its disk is nearly full. */
public final class Outages {

    private final BooleanSupplier storageIsLow;

    public Outages(BooleanSupplier storageIsLow) {
        this.storageIsLow = storageIsLow;
    }

    /** Which outage a failure comes from, if it comes from one. */
    public Optional<Outage> of(Throwable failure) {
        return Outage.of(failure)
                .map(outage ->
                        outage == Outage.READ_ONLY && storageIsLow.getAsBoolean() ? Outage.STORAGE_FULL : outage);
    }
}
