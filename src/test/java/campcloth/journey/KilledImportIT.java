package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.store.postgres.PostgresOfAProgram;
import campcloth.supply.GeneratedList;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The packed program, killed in the middle of taking a list over: nothing half-written, and the list again makes no duplicate. */
class KilledImportIT {

    private static final JsonMapper JSON = new JsonMapper();
    private static final int ROWS = Integer.getInteger("rows", 20_000);
    private static final String SUPPLIER = "supplier=Wendlow%20Mill";

    /** Whoever writes the last row of the list waits until this is taken back. */
    private static final String LAST_ROW_TAKEN = "insert into cloth_listing (supplier, supplier_key, cloth_id, said)"
            + " select 'Wendlow Mill', 'K" + ROWS + "', min(id), '{}' from cloth";

    @TempDir
    Path folder;

    @Test
    void aListThatWasCutOffLeavesNothingAndCanBeSentAgain() throws Exception {
        Path csv = folder.resolve("list.csv");
        try (OutputStream out = Files.newOutputStream(csv)) {
            GeneratedList.write(7, ROWS, out);
        }
        Path data = folder.resolve("data");
        long before;
        try (PackedProgram program = started(data)) {
            before = cloths(program);
            killedWhileWriting(program, data, csv);
        }
        try (PackedProgram again = started(data)) {
            assertThat(cloths(again)).as("cloths after the kill").isEqualTo(before);
            assertThat(report(again.list(SUPPLIER, csv)).at("/counts/added").asInt())
                    .isEqualTo(ROWS);
            assertThat(cloths(again)).isEqualTo(before + ROWS);
            assertThat(report(again.list(SUPPLIER, csv)).at("/counts/unchanged").asInt())
                    .isEqualTo(ROWS);
            assertThat(cloths(again)).as("cloths after the list came twice").isEqualTo(before + ROWS);
        }
    }

    private static PackedProgram started(Path data) throws Exception {
        return PackedProgram.start(data, Map.of(), List.of("-Xmx256m")).ready();
    }

    /** Kills it once some rows were written, and before all are, however fast it is. */
    private static void killedWhileWriting(PackedProgram program, Path data, Path csv) throws Exception {
        try (Connection holding = PostgresOfAProgram.connect(data);
                Statement statement = holding.createStatement()) {
            holding.setAutoCommit(false);
            assertThat(statement.executeUpdate(LAST_ROW_TAKEN)).isEqualTo(1);
            killedOnceItTellsOfWriting(program, csv);
        }
    }

    private static void killedOnceItTellsOfWriting(PackedProgram program, Path csv) throws Exception {
        HttpResponse<InputStream> answer = program.list(SUPPLIER, csv);
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(answer.body(), StandardCharsets.UTF_8))) {
            long written = 0;
            while (written == 0) {
                String line = lines.readLine();
                assertThat(line)
                        .as("the list was taken over before any writing was told")
                        .isNotNull();
                assertThat(line).doesNotContain("\"report\"");
                written = JSON.readTree(line).at("/progress/written").asLong();
            }
            program.kill();
            assertThat(written).isLessThan(ROWS);
        } catch (IOException cutOff) {
            assertThat(cutOff)
                    .as("the answer ends where the program was killed")
                    .isNotNull();
        }
    }

    private static long cloths(PackedProgram program) throws Exception {
        return JSON.readTree(program.get("/api/cloths?size=1").body())
                .path("total")
                .asLong();
    }

    /** The last line of the answer. */
    private static JsonNode report(HttpResponse<InputStream> answer) throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(answer.body(), StandardCharsets.UTF_8))) {
            String last = lines.lines().reduce("", (earlier, line) -> line);
            return JSON.readTree(last).path("report");
        }
    }
}
