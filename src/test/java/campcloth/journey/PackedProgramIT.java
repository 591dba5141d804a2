package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.store.postgres.PostgresForTests;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packed program from outside: starts, keeps what it acknowledged, says plainly what keeps it from starting. */
class PackedProgramIT {

    private static final int WRITERS = 4;
    private static final int ACKNOWLEDGED_BEFORE_THE_KILL = 200;

    @TempDir
    Path folder;

    @Test
    void nothingAcknowledgedIsLostWhenTheProgramIsKilledInTheMiddleOfWriting() throws Exception {
        List<String> acknowledged;
        try (PackedProgram program = PackedProgram.start(folder, Map.of()).ready()) {
            acknowledged = writeUntilKilled(program);
        }
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(ACKNOWLEDGED_BEFORE_THE_KILL);
        try (PackedProgram again = PackedProgram.start(folder, Map.of()).ready()) {
            for (String location : acknowledged) {
                assertThat(again.get(location).statusCode()).as(location).isEqualTo(200);
            }
            assertThat(again.terminate()).as("exit status after SIGTERM").isIn(0, 143);
        }
    }

    @Test
    void aBrokenCatalogueStopsTheStartWithFileLineFieldAndRemedy() throws Exception {
        Path catalogue = Files.createDirectories(folder.resolve("catalogue"));
        copyFolder(Path.of("catalogue"), catalogue);
        Path cloths = catalogue.resolve("cloths.csv");
        List<String> lines = new ArrayList<>(Files.readAllLines(cloths));
        int last = lines.size() - 1;
        lines.set(
                last,
                lines.get(last)
                        .replaceFirst(
                                ",(PLAIN|RAISED),(NONE|WASHED|PRESHRUNK|BRUSHED|FULLED|COATED|WAXED|CALENDERED|MERCERISED),",
                                ",FLUFFY,$2,"));
        Files.write(cloths, lines);
        try (PackedProgram program =
                PackedProgram.start(folder.resolve("data"), Map.of("CAMPCLOTH_CATALOGUE_DIR", catalogue.toString()))) {
            assertThat(program.waitFor()).isNotZero();
            assertThat(program.printed())
                    .contains("cloths.csv line " + lines.size() + ", surface:")
                    .contains("FLUFFY")
                    .contains("write one of")
                    .doesNotContain("\tat ");
        }
    }

    @Test
    void aPostgresOfOnesOwnIsUsedWhereItIsNamedAndNoDataFolderIsMade() throws Exception {
        PostgresForTests.Database own = PostgresForTests.fresh();
        Map<String, String> named = Map.of(
                "SPRING_DATASOURCE_URL", own.url(),
                "SPRING_DATASOURCE_USERNAME", own.user(),
                "SPRING_DATASOURCE_PASSWORD", own.password());
        Path unused = folder.resolve("unused");
        try (PackedProgram program = PackedProgram.start(unused, named).ready();
                Connection connection = own.connect();
                ResultSet cloths = connection.createStatement().executeQuery("select count(*) from cloth")) {
            assertThat(program.get("/api/cloths?size=1").statusCode()).isEqualTo(200);
            assertThat(cloths.next()).isTrue();
            assertThat(cloths.getInt(1)).isGreaterThanOrEqualTo(160);
            assertThat(unused).doesNotExist();
        }
    }

    private static List<String> writeUntilKilled(PackedProgram program) throws InterruptedException {
        ConcurrentLinkedQueue<String> acknowledged = new ConcurrentLinkedQueue<>();
        AtomicInteger number = new AtomicInteger();
        List<Thread> writers = new ArrayList<>();
        for (int i = 0; i < WRITERS; i++) {
            Thread writer = new Thread(() -> writeOn(program, number, acknowledged));
            writer.start();
            writers.add(writer);
        }
        while (acknowledged.size() < ACKNOWLEDGED_BEFORE_THE_KILL
                && writers.get(0).isAlive()) {
            writers.get(0).join(20);
        }
        program.kill();
        for (Thread writer : writers) {
            writer.join();
        }
        return List.copyOf(acknowledged);
    }

    private static void writeOn(PackedProgram program, AtomicInteger number, ConcurrentLinkedQueue<String> written) {
        try {
            while (true) {
                int n = number.getAndIncrement();
                HttpResponse<String> answer = n % 2 == 0
                        ? program.post("/api/events", "{\"name\": \"camp " + n + "\", \"season\": \"SUMMER\"}")
                        : program.post(
                                "/api/cloths",
                                "{\"name\": \"cloth " + n
                                        + "\", \"blend\": [{\"fibre\": \"wool\", \"percent\": 100}],"
                                        + " \"weightGsm\": 300, \"widthCm\": 150}");
                if (answer.statusCode() == 201) {
                    written.add(answer.headers().firstValue("Location").orElseThrow());
                }
            }
        } catch (IOException killed) {
            // the program is gone: what was acknowledged until now must be there afterwards
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static void copyFolder(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }
}
