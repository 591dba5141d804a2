package campcloth.store.backup;

import java.util.List;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a backup holds, told in its last entry but one.
 *
 * @param format of the file itself
 * @param program version of the program that made it
 * @param schemaVersion of the last migration that the database had
 * @param takenAt when, ISO 8601
 */
record Manifest(
        int format,
        String program,
        String schemaVersion,
        String takenAt,
        List<Table> tables,
        List<Sequence> sequences) {

    static final int FORMAT = 1;

    /**
     * One table.
     *
     * @param columns those that hold something of their own; computed ones are left out
     * @param sha256 of its rows as they stand in the file, in the order of its key
     */
    record Table(String name, List<String> columns, long rows, long bytes, String sha256) {}

    /** Where a sequence of numbers had come to; one that gave none yet is not told. */
    record Sequence(String name, long lastValue) {}

    private static final JsonMapper JSON = JsonMapper.builder().build();

    long rows() {
        return tables.stream().mapToLong(Table::rows).sum();
    }

    byte[] written() {
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(this);
    }

    static Manifest read(byte[] text) {
        return JSON.readValue(text, Manifest.class);
    }
}
