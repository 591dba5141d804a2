package campcloth.pages.shop;

import campcloth.fibre.LabelReading;
import java.util.List;
import java.util.Optional;

/**
 * What became of the label.
 *
 * @param reading what came of reading it; empty where there is none
 * @param place where it could not be read; empty where it was
 */
public record LabelTold(Optional<LabelReading> reading, Optional<LabelPlace> place) {

    static LabelTold of(Optional<String> text, Optional<LabelReading> reading) {
        return new LabelTold(
                reading,
                reading.filter(LabelReading.NotRead.class::isInstance)
                        .map(LabelReading.NotRead.class::cast)
                        .map(notRead -> LabelPlace.of(text.orElse(""), notRead)));
    }

    public boolean isThere() {
        return reading.isPresent();
    }

    public boolean isRead() {
        return !parts().isEmpty();
    }

    /** As read, part by part. */
    public List<LabelReading.Part> parts() {
        return read().map(LabelReading.Read::parts).orElse(List.of());
    }

    public List<String> notes() {
        return read().map(LabelReading.Read::notes).orElse(List.of());
    }

    private Optional<LabelReading.Read> read() {
        return reading.filter(LabelReading.Read.class::isInstance).map(LabelReading.Read.class::cast);
    }
}
