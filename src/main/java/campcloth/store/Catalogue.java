package campcloth.store;

import campcloth.cloth.ClothTable;
import campcloth.demo.DemoCamp;
import campcloth.demo.DemoFiles;
import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.fibre.FlameKey;
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
import java.util.Optional;

/** All reference data, read whole and checked against itself. */
record Catalogue(
        Sources sources,
        Fibres fibres,
        List<ClothTable.Entry> cloths,
        Seasons seasons,
        Sizes sizes,
        LabelVocabulary labelVocabulary,
        FlameKey flameKey,
        ListWords listWords,
        Optional<DemoCamp> demo) {

    private static final List<String> CITING = List.of(
            "fibres.csv",
            "cloths.csv",
            "seasons.csv",
            "sizes.csv",
            "burn-test.csv",
            "burn-test-classes.csv",
            "list-columns.csv");

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
        FlameKey flameKey = FlameKey.read(
                files.open("burn-test.csv", faults),
                files.open("burn-test-classes.csv", faults),
                files.open("burn-test-answers.csv", faults),
                fibres,
                faults);
        ListWords listWords = ListWords.read(files.open("list-columns.csv", faults), faults);
        Optional<DemoCamp> demo = DemoFiles.read(files.openAll("demo", faults), fibres, faults);
        for (String file : CITING) {
            for (Citation citation : Citation.in(file, files.open(file, new ArrayList<>()))) {
                citation.missingFrom(sources).ifPresent(faults::add);
            }
        }
        Map<String, Reader> furtherCiting = files.openAll("label-words", new ArrayList<>());
        Optional.ofNullable(files.openAll("demo", new ArrayList<>()).get(DemoFiles.CLOTHS))
                .ifPresent(text -> furtherCiting.put(DemoFiles.CLOTHS, text));
        for (Map.Entry<String, Reader> file : furtherCiting.entrySet()) {
            for (Citation citation : Citation.in(file.getKey(), file.getValue())) {
                citation.missingFrom(sources).ifPresent(faults::add);
            }
        }
        if (!faults.isEmpty()) {
            throw new CatalogueBroken(files.where(), faults);
        }
        return new Catalogue(sources, fibres, cloths, seasons, sizes, words, flameKey, listWords, demo);
    }
}
