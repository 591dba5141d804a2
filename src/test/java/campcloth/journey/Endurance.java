package campcloth.journey;

import campcloth.journey.EnduranceLedger.Thing;
import campcloth.outage.CutLine;
import campcloth.outage.SmallDisk;
import campcloth.store.postgres.PostgresToKill;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;

/**
 * The packed program under steady load while everything around it breaks by turns, on this machine alone: the database is killed,
 * the program is killed, lines are cut and go silent, the disk fills. Run by hand; {@code -Dminutes=6 -Dclients=4 -Dseed=1}. At the
 * end the account of the clients is held against the tables themselves.
 */
public final class Endurance implements AutoCloseable {

    private static final int DISK_MEGABYTES = 700;

    private enum Blow {
        DATABASE_KILLED,
        PROGRAM_KILLED,
        DATABASE_LINE_CUT,
        DATABASE_LINE_DROPPED,
        DATABASE_LINE_SILENT,
        CLIENT_LINE_CUT,
        CLIENT_LINE_DROPPED,
        DISK_FULL
    }

    private final Random random;
    private final EnduranceLedger ledger = new EnduranceLedger();
    private final Path folder = Files.createTempDirectory("campcloth-endurance");
    private final Optional<SmallDisk> disk;
    private final PostgresToKill postgres;
    private final CutLine databaseLine;
    private final CutLine clientLine;
    private final Map<String, String> environment;
    private volatile PackedProgram program;

    private Endurance(long seed) throws Exception {
        random = new Random(seed);
        disk = SmallDisk.mounted(folder.resolve("disk"), DISK_MEGABYTES);
        postgres = PostgresToKill.start(disk.map(SmallDisk::path).orElse(folder).resolve("data"));
        databaseLine = new CutLine(postgres::port);
        environment = Map.of(
                "SPRING_DATASOURCE_URL", postgres.url(databaseLine.port()),
                "SPRING_DATASOURCE_USERNAME", postgres.user(),
                "SPRING_DATASOURCE_PASSWORD", postgres.password(),
                "CAMPCLOTH_DEMO", "false");
        program = started();
        clientLine = new CutLine(() -> program.port());
    }

    public static void main(String[] arguments) throws Exception {
        long seed = Long.getLong("seed", 1);
        boolean whole;
        try (Endurance endurance = new Endurance(seed)) {
            whole = endurance.run(Integer.getInteger("minutes", 6), Integer.getInteger("clients", 4), seed);
        }
        System.exit(whole ? 0 : 1);
    }

    private PackedProgram started() throws Exception {
        return PackedProgram.start(folder.resolve("unused"), environment, List.of("-Xmx512m"))
                .ready();
    }

    private boolean run(int minutes, int clients, long seed) throws Exception {
        System.out.printf(
                "%d minutes, %d clients, seed %d, disk %s%n",
                minutes,
                clients,
                seed,
                disk.isPresent() ? DISK_MEGABYTES + " MB of its own" : "shared: it is not filled");
        List<EnduranceClient> load = new ArrayList<>();
        List<Thread> threads = new ArrayList<>();
        SplittableRandom dice = new SplittableRandom(seed);
        for (int i = 0; i < clients; i++) {
            EnduranceClient client = new EnduranceClient(i, clientLine.port(), ledger, dice.split());
            load.add(client);
            threads.add(new Thread(client, "client-" + i));
        }
        threads.forEach(Thread::start);
        blows(System.nanoTime() + TimeUnit.MINUTES.toNanos(minutes));
        load.forEach(EnduranceClient::end);
        for (Thread thread : threads) {
            thread.join(TimeUnit.MINUTES.toMillis(2));
        }
        ledger.print();
        return account();
    }

    private void blows(long end) throws Exception {
        List<Blow> round = new ArrayList<>();
        while (System.nanoTime() < end) {
            if (round.isEmpty()) {
                round.addAll(List.of(Blow.values()));
                if (disk.isEmpty()) {
                    round.remove(Blow.DISK_FULL);
                }
                Collections.shuffle(round, random);
            }
            Thread.sleep(5_000 + random.nextInt(5_000));
            Blow blow = round.remove(0);
            long begun = System.nanoTime();
            String how = strike(blow);
            long mended = System.nanoTime();
            long recovered = awaitAcknowledged(mended);
            System.out.printf(
                    "%s: lasted %d ms%s, the first acknowledged write %s%n",
                    blow,
                    (mended - begun) / 1_000_000,
                    how,
                    recovered < 0 ? "did not come within 90 s" : recovered + " ms after it was over");
        }
        Thread.sleep(3_000);
    }

    private String strike(Blow blow) throws Exception {
        int whileMillis = 2_000 + random.nextInt(5_000);
        switch (blow) {
            case DATABASE_KILLED -> {
                postgres.kill();
                Thread.sleep(whileMillis);
                postgres.startAgain();
            }
            case PROGRAM_KILLED -> {
                program.kill();
                program.close();
                program = started();
            }
            case DATABASE_LINE_CUT -> {
                databaseLine.cut();
                Thread.sleep(whileMillis);
                databaseLine.mend();
            }
            case DATABASE_LINE_DROPPED -> databaseLine.drop();
            case DATABASE_LINE_SILENT -> {
                databaseLine.mute();
                Thread.sleep(whileMillis);
                databaseLine.mend();
            }
            case CLIENT_LINE_CUT -> {
                clientLine.cut();
                Thread.sleep(whileMillis);
                clientLine.mend();
            }
            case CLIENT_LINE_DROPPED -> clientLine.drop();
            case DISK_FULL -> {
                return filled(disk.orElseThrow(), whileMillis);
            }
        }
        return "";
    }

    /** Whoever makes room on the disk looks after the server as well, which may have stopped for want of it. */
    private String filled(SmallDisk full, int whileMillis) throws Exception {
        full.fill(0);
        Thread.sleep(2L * whileMillis);
        boolean ran = postgres.runs();
        full.makeRoom();
        if (!ran) {
            postgres.startAgain();
        }
        return ran ? " (the server went on)" : " (the server stopped and was started again)";
    }

    private long awaitAcknowledged(long since) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(90);
        long millis = ledger.millisToFirstAfter(since);
        while (millis < 0 && System.nanoTime() < end) {
            Thread.sleep(20);
            millis = ledger.millisToFirstAfter(since);
        }
        return millis;
    }

    /** What stands in the tables, by the marks of the clients. */
    private boolean account() throws Exception {
        Map<String, List<String>> kept = new HashMap<>();
        try (Connection connection = postgres.connect();
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("""
                        select body ->> 'name' from cloth where body ->> 'name' like 'mk-%' and removed_by is null
                        union all select body ->> 'name' from event where body ->> 'name' like 'mk-%'
                        union all select body ->> 'note' from cloth_swatch where body ->> 'note' like 'mk-%'
                        union all select substring(body::text from 'mk-[0-9]+-[0-9]+-') from cutting_plan where body::text like '%mk-%'
                        """)) {
            while (row.next()) {
                String name = row.getString(1);
                String mark = name.substring(0, name.lastIndexOf('-') + 1);
                kept.computeIfAbsent(mark, key -> new ArrayList<>()).add(name);
            }
        }
        long lost = 0;
        long otherwise = 0;
        for (Thing thing : ledger.things().values()) {
            List<String> names = kept.getOrDefault(thing.mark(), List.of());
            lost += names.isEmpty() ? 1 : 0;
            otherwise += names.isEmpty() || names.contains(thing.name()) ? 0 : 1;
        }
        long twice = kept.values().stream().filter(names -> names.size() > 1).count();
        long unknown = kept.keySet().stream()
                .filter(mark -> !ledger.things().containsKey(mark))
                .count();
        System.out.printf(
                "acknowledged things %d: lost %d, twice %d, other than last acknowledged %d; wrong reads %d; kept but never"
                        + " acknowledged %d%n",
                ledger.things().size(), lost, twice, otherwise, ledger.wrongReads.sum(), unknown);
        return lost == 0 && twice == 0 && otherwise == 0 && ledger.wrongReads.sum() == 0;
    }

    @Override
    public void close() throws Exception {
        program.close();
        clientLine.close();
        databaseLine.close();
        postgres.close();
        if (disk.isPresent()) {
            disk.get().close();
        }
        org.springframework.util.FileSystemUtils.deleteRecursively(folder);
    }
}
