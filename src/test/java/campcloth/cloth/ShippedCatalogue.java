package campcloth.cloth;

import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.figure.Fault;
import campcloth.figure.Sources;
import campcloth.garment.Sizes;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The reference data that the program ships with, read once.
 *
 * @param sources the sources
 * @param fibres the fibres
 * @param seasons the spells of each season
 * @param sizes sizes of people
 * @param cloths the cloths by id, in the order of the file
 * @param faults what is wrong in any of the files
 */
public record ShippedCatalogue(
        Sources sources, Fibres fibres, Seasons seasons, Sizes sizes, Map<String, Cloth> cloths, List<Fault> faults) {

    private static final ShippedCatalogue CATALOGUE = read();

    public static ShippedCatalogue get() {
        return CATALOGUE;
    }

    static BufferedReader file(String name) throws IOException {
        return Files.newBufferedReader(Path.of("catalogue", name));
    }

    public Cloth cloth(String id) {
        return Optional.ofNullable(cloths.get(id)).orElseThrow();
    }

    double figure(String id, Property property) {
        return cloth(id).required(property).value();
    }

    private static ShippedCatalogue read() {
        List<Fault> faults = new ArrayList<>();
        try (var sources = file("sources.csv");
                var fibres = file("fibres.csv");
                var seasons = file("seasons.csv");
                var sizes = file("sizes.csv");
                var cloths = file("cloths.csv")) {
            Fibres known = Fibres.read(fibres, faults);
            Map<String, Cloth> byId = new LinkedHashMap<>();
            ClothTable.read(cloths, known, faults).forEach(entry -> byId.put(entry.id(), entry.cloth()));
            return new ShippedCatalogue(
                    Sources.read(sources, faults),
                    known,
                    Seasons.read(seasons, faults),
                    Sizes.read(sizes, faults),
                    byId,
                    faults);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
