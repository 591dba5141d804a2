package campcloth.store;

import campcloth.cloth.ClothTable;
import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.fibre.LabelVocabulary;
import campcloth.figure.Citation;
import campcloth.figure.Fault;
import campcloth.figure.Sources;
import campcloth.garment.Sizes;
import campcloth.supply.ListWords;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** All reference data, read whole and checked against itself. */
record Catalogue(
        Sources sources,
        Fibres fibres,
        List<ClothTable.Entry> cloths,
        Seasons seasons,
        Sizes sizes,
        LabelVocabulary labelVocabulary,
        ListWords listWords) {

    private static final List<String> CITING =
            List.of("fibres.csv", "cloths.csv", "seasons.csv", "sizes.csv", "list-columns.csv");

    /**
     * Reads everything.
     *
     * @throws CatalogueBroken with every fault found, where there is any
     * @throws IOException where a file that is there cannot be read
     */
    static Catalogue read(CatalogueFiles files) throws IOException {
        List<Fault> faults = new ArrayList<>();
        Sources sources = Sources.read(files.open("sources.csv", faults), faults);
        Fibres fibres = Fibres.read(files.open("fibres.csv", faults), faults);
        List<ClothTable.Entry> cloths = ClothTable.read(files.open("cloths.csv", faults), fibres, faults);
        Seasons seasons = Seasons.read(files.open("seasons.csv", faults), faults);
        Sizes sizes = Sizes.read(files.open("sizes.csv", faults), faults);
        LabelVocabulary words = LabelVocabulary.read(files.openAll("label-words", faults), fibres, faults);
        ListWords listWords = ListWords.read(files.open("list-columns.csv", faults), faults);
        for (String file : CITING) {
            for (Citation citation : Citation.in(file, files.open(file, new ArrayList<>()))) {
                citation.missingFrom(sources).ifPresent(faults::add);
            }
        }
        for (Map.Entry<String, Reader> file :
                files.openAll("label-words", new ArrayList<>()).entrySet()) {
            for (Citation citation : Citation.in(file.getKey(), file.getValue())) {
                citation.missingFrom(sources).ifPresent(faults::add);
            }
        }
        if (!faults.isEmpty()) {
            throw new CatalogueBroken(files.where(), faults);
        }
        return new Catalogue(sources, fibres, cloths, seasons, sizes, words, listWords);
    }
}
