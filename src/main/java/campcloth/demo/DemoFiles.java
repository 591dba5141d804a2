package campcloth.demo;

import campcloth.cloth.ClothTable;
import campcloth.cloth.DripTest;
import campcloth.cloth.Swatch;
import campcloth.cloth.WeighedPieces;
import campcloth.demo.DemoCamp.DemoCloth;
import campcloth.event.Event;
import campcloth.fibre.Fibres;
import campcloth.figure.DayText;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.ReferenceTable.Row;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the demo from its tables. */
public final class DemoFiles {

    /** Names of its tables; the cloths are written as in the catalogue. */
    public static final String CLOTHS = "demo/cloths.csv";

    private static final String SWATCHES = "demo/swatches.csv";
    private static final List<String> SWATCH_COLUMNS =
            List.of("cloth", "measuredOn", "note", "pieces", "scaleStepG", "rulerStepMm", "dripSeconds");
    private static final Pattern PIECE = Pattern.compile("([0-9.]+)x([0-9.]+) ([0-9.]+)");
    private static final Pattern LIST = Pattern.compile("\\s*;\\s*");

    private record Told(String cloth, Swatch swatch) {}

    private DemoFiles() {}

    /**
     * The demo; empty where none of its tables is there, or where there is a fault in them.
     *
     * @param files the tables by name
     * @throws IOException where a table cannot be read at all
     */
    public static Optional<DemoCamp> read(Map<String, Reader> files, Fibres fibres, List<Fault> faults)
            throws IOException {
        if (files.isEmpty()) {
            return Optional.empty();
        }
        List<Fault> found = new ArrayList<>();
        Optional<Event> event = DemoEventFiles.read(files, fibres, found);
        List<DemoCloth> cloths = cloths(files, fibres, found);
        faults.addAll(found);
        return found.isEmpty() ? event.map(camp -> new DemoCamp(camp, cloths)) : Optional.empty();
    }

    /** A table; one that is missing beside the others is a fault. */
    static Reader open(Map<String, Reader> files, String name, List<Fault> faults) {
        Reader file = files.get(name);
        if (file == null) {
            faults.add(new Fault(name, 1, "(whole file)", "is missing", "put it back, or take the folder away"));
            return new StringReader("");
        }
        return file;
    }

    /** The parts of a cell that lists several. */
    static List<String> list(Row row, String column) {
        return row.optionalText(column).stream()
                .flatMap(text -> Stream.of(LIST.split(text.strip())))
                .toList();
    }

    private static List<DemoCloth> cloths(Map<String, Reader> files, Fibres fibres, List<Fault> faults)
            throws IOException {
        Map<String, List<Swatch>> swatches = new LinkedHashMap<>();
        List<ClothTable.Entry> entries = ClothTable.read(CLOTHS, open(files, CLOTHS, faults), fibres, faults);
        entries.forEach(entry -> swatches.put(entry.id(), new ArrayList<>()));
        ReferenceTable.read(SWATCHES, open(files, SWATCHES, faults), SWATCH_COLUMNS, faults)
                .map(DemoFiles::told)
                .forEach(told -> {
                    List<Swatch> ofCloth = swatches.get(told.cloth());
                    if (ofCloth == null) {
                        faults.add(new Fault(
                                SWATCHES, 1, "cloth", "there is no " + told.cloth(), "name a cloth of the demo"));
                    } else {
                        ofCloth.add(told.swatch());
                    }
                });
        return entries.stream()
                .map(entry -> new DemoCloth(entry.id(), entry.cloth(), swatches.getOrDefault(entry.id(), List.of())))
                .toList();
    }

    private static Told told(Row row) {
        List<Double> drips = list(row, "dripSeconds").stream()
                .map(text -> number("dripSeconds", text))
                .toList();
        return new Told(
                row.text("cloth"),
                new Swatch(
                        DayText.day("measuredOn", Optional.of(row.text("measuredOn")))
                                .orElseThrow(),
                        row.text("note"),
                        false,
                        Optional.of(new WeighedPieces(
                                list(row, "pieces").stream()
                                        .map(DemoFiles::piece)
                                        .toList(),
                                row.number("scaleStepG"),
                                row.number("rulerStepMm"))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        drips.isEmpty() ? Optional.empty() : Optional.of(new DripTest(drips))));
    }

    private static WeighedPieces.Piece piece(String text) {
        Matcher parts = PIECE.matcher(text);
        if (!parts.matches()) {
            throw Refused.of(
                    "pieces", "'" + text + "' is no piece", "write length x width in cm and mass in g: 10x10 1.94");
        }
        return new WeighedPieces.Piece(
                number("pieces", parts.group(1)), number("pieces", parts.group(2)), number("pieces", parts.group(3)));
    }

    private static double number(String column, String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException notANumber) {
            throw Refused.of(column, "'" + text + "' is not a number", "write digits with a decimal point");
        }
    }
}
