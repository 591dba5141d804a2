package campcloth.supply;

import campcloth.cloth.Cloth;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.fibre.Blend;
import campcloth.figure.Figure;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes cloths as a list that {@link ListReader} reads again without loss: each figure whole, with interval, basis and source. No
 * cell is run by a spreadsheet as a formula.
 */
public final class ListWriter {

    private static final String ID = "campcloth id";

    /** The columns that are for people alone; reading names them among the ignored. */
    private static final List<String> FOR_PEOPLE = List.of("supplier", "origin");

    private static final List<String> BEFORE = List.of(
            ID, "key", "name", "blend", "weave", "surface", "finish", "nap", "stretch", "flameTreatment", "note");

    private final CSVPrinter printer;

    /** A cloth, and under which supplier's key it is kept, where it came with a list. */
    public record Line(KeptCloth kept, Optional<String> supplier, Optional<String> key) {}

    /** Begins with the head. */
    public ListWriter(Appendable out) throws IOException {
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        List<String> head = new ArrayList<>(BEFORE);
        Arrays.stream(Property.values()).map(Property::field).forEach(head::add);
        head.addAll(FOR_PEOPLE);
        printer.printRecord(head);
    }

    /** Writes one cloth. */
    public void write(Line line) throws IOException {
        Cloth cloth = line.kept().cloth();
        List<String> cells = new ArrayList<>(List.of(
                line.kept().id(),
                line.key().orElse(line.kept().id()),
                cloth.name(),
                blend(cloth.blend()),
                cloth.weave().name(),
                cloth.surface().name(),
                cloth.finish().name(),
                cloth.nap() ? "yes" : "no",
                cloth.stretch() ? "yes" : "no",
                cloth.flameTreatment() == FlameTreatment.NONE
                        ? ""
                        : cloth.flameTreatment().name(),
                cloth.note()));
        for (Property property : Property.values()) {
            cells.add(cloth.figure(property).map(ListWriter::figure).orElse(""));
        }
        cells.add(line.supplier().orElse(""));
        cells.add(line.kept().origin().name());
        printer.printRecord(cells.stream().map(Cells::guarded).toList());
    }

    private static String blend(Blend blend) {
        return blend.shares().stream()
                .map(share -> share.fibre().key() + " " + share.percent())
                .collect(Collectors.joining("; "));
    }

    private static String figure(Figure figure) {
        return figure.value() + " (" + figure.low() + ".." + figure.high() + ") " + figure.basis() + " "
                + figure.source();
    }
}
