package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import campcloth.outage.SmallDisk;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packed program with its own database on a disk that fills: refused with a reason, reading goes on, nothing acknowledged is
 * lost, and it goes on by itself once there is room. Skipped where no disk can be mounted for a trial.
 */
@Timeout(600)
class FullDiskIT {

    private static final int DISK_MEGABYTES = 500;
    private static final long RESERVE_BYTES = 64L << 20;
    private static final String RULE = "{\"authority\": \"EVENT\", \"statement\": \""
            + "No more than a third synthetic near the fire. ".repeat(20) + "\"}";

    private final List<String> acknowledged = new ArrayList<>();

    @TempDir
    Path folder;

    /** The reserve keeps the database from running into the wall. */
    @Test
    void withinTheReserveItReadsOn() throws Exception {
        onSmallDisk(Map.of(), disk -> disk.fill(RESERVE_BYTES / 2), (data, settings) -> {}, 507);
    }

    /** Without a reserve PostgreSQL itself has no room, and may have to start anew. */
    @Test
    void onADiskFullToTheLastByteNothingAcknowledgedIsLost() throws Exception {
        onSmallDisk(
                Map.of("CAMPCLOTH_DISK_RESERVE_MB", "0"),
                disk -> disk.fill(0),
                (data, settings) -> {
                    try (PackedProgram again =
                            PackedProgram.start(data, settings).ready()) {
                        allAreThere(again);
                    }
                },
                503,
                507);
    }

    private interface Filling {
        void of(SmallDisk disk) throws IOException;
    }

    private interface Afterwards {
        void with(Path data, Map<String, String> settings) throws Exception;
    }

    private void onSmallDisk(Map<String, String> settings, Filling filling, Afterwards afterwards, Integer... statuses)
            throws Exception {
        Optional<SmallDisk> mounted = SmallDisk.mounted(folder.resolve("disk"), DISK_MEGABYTES);
        assumeTrue(mounted.isPresent(), "no disk can be mounted for a trial here");
        try (SmallDisk disk = mounted.get()) {
            Path data = disk.path().resolve("data");
            try (PackedProgram program = PackedProgram.start(data, settings).ready()) {
                write(program, 20);
                filling.of(disk);
                HttpResponse<String> refused = writeUntilRefused(program);
                assertThat(refused.statusCode()).as(refused.body()).isIn((Object[]) statuses);
                assertThat(refused.headers().firstValue("Retry-After")).isPresent();
                if (refused.statusCode() == 507) {
                    assertThat(refused.body()).contains("storage-full", "frees room");
                    assertThat(program.get(acknowledged.get(0)).statusCode())
                            .as("reading goes on")
                            .isEqualTo(200);
                }
                System.out.println("Refused with " + refused.statusCode() + " after " + acknowledged.size()
                        + " writes, " + (disk.freeBytes() >> 10) + " KiB free");
                disk.makeRoom();
                long begun = System.nanoTime();
                writeUntilTaken(program);
                System.out.println("Taken again after " + (System.nanoTime() - begun) / 1_000_000 + " ms");
                allAreThere(program);
            }
            afterwards.with(data, settings);
        }
    }

    private void write(PackedProgram program, int times) throws Exception {
        for (int i = 0; i < times; i++) {
            assertThat(written(program).statusCode()).isEqualTo(201);
        }
    }

    private HttpResponse<String> writeUntilRefused(PackedProgram program) throws Exception {
        HttpResponse<String> answer = written(program);
        while (answer.statusCode() == 201) {
            answer = written(program);
        }
        return answer;
    }

    private void writeUntilTaken(PackedProgram program) {
        await().atMost(2, TimeUnit.MINUTES).pollInterval(200, TimeUnit.MILLISECONDS).until(() -> {
            HttpResponse<String> answer = written(program);
            assertThat(answer.statusCode()).as(answer.body()).isIn(201, 503, 507);
            return answer.statusCode() == 201;
        });
    }

    private HttpResponse<String> written(PackedProgram program) throws Exception {
        HttpResponse<String> answer = program.post(
                "/api/events",
                "{\"name\": \"camp " + acknowledged.size() + "\", \"season\": \"SUMMER\", \"rules\": ["
                        + String.join(", ", java.util.Collections.nCopies(20, RULE)) + "]}");
        if (answer.statusCode() == 201) {
            acknowledged.add(answer.headers().firstValue("Location").orElseThrow());
        }
        return answer;
    }

    private void allAreThere(PackedProgram program) throws Exception {
        for (int i = 0; i < acknowledged.size(); i++) {
            HttpResponse<String> answer = program.get(acknowledged.get(i));
            assertThat(answer.statusCode()).as(acknowledged.get(i)).isEqualTo(200);
            assertThat(answer.body()).contains("\"camp " + i + "\"");
        }
    }
}
