package campcloth.store;

import campcloth.figure.Fault;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/** The files of the catalogue: those packed with the program, or a folder in their place. UTF-8 throughout. */
final class CatalogueFiles {

    private static final String PACKED = "classpath:catalogue/";

    private final String where;
    private final String pattern;

    private CatalogueFiles(String where, String pattern) {
        this.where = where;
        this.pattern = pattern;
    }

    /**
     * Finds the files.
     *
     * @param folder the folder that replaces the packed catalogue; empty where there is none
     * @throws CatalogueBroken where the folder is not there
     */
    static CatalogueFiles in(String folder) throws IOException {
        if (folder.isBlank()) {
            return new CatalogueFiles("the program", PACKED);
        }
        Path path = Path.of(folder).toAbsolutePath().normalize();
        if (!Files.isDirectory(path)) {
            throw new CatalogueBroken(
                    path.toString(),
                    List.of(new Fault(
                            path.toString(),
                            1,
                            "CAMPCLOTH_CATALOGUE_DIR",
                            "is no folder",
                            "name a folder that is there")));
        }
        return new CatalogueFiles(path.toString(), path.toUri().toString());
    }

    String where() {
        return where;
    }

    /** Text of a file; a file that is missing or not UTF-8 becomes a fault and reads as empty. */
    Reader open(String name, List<Fault> faults) throws IOException {
        Resource file = new PathMatchingResourcePatternResolver().getResource(pattern + name);
        if (!file.exists()) {
            faults.add(new Fault(name, 1, "(whole file)", "is missing", "put it back"));
            return new StringReader("");
        }
        return reader(name, file.getContentAsByteArray(), faults);
    }

    /** The texts of all CSV files of a sub-folder by file name, in the order of their names. */
    Map<String, Reader> openAll(String folder, List<Fault> faults) throws IOException {
        Map<String, Reader> readers = new TreeMap<>();
        for (Resource file : new PathMatchingResourcePatternResolver().getResources(pattern + folder + "/*.csv")) {
            String name = folder + "/" + file.getFilename();
            readers.put(name, reader(name, file.getContentAsByteArray(), faults));
        }
        return readers;
    }

    private Reader reader(String name, byte[] bytes, List<Fault> faults) {

        try {
            return new StringReader(StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException notUtf8) {
            faults.add(new Fault(name, 1, "(whole file)", "is not UTF-8", "save it as UTF-8"));
            return new StringReader("");
        }
    }
}
