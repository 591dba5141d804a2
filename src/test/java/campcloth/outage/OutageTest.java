package campcloth.outage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.BatchUpdateException;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes after PostgreSQL's manual, Appendix A; what the operating systems say after errno(3) and the messages of Windows, from memory. */
class OutageTest {

    @ParameterizedTest
    @CsvSource({
        "08001, DATABASE_AWAY",
        "08006, DATABASE_AWAY",
        "57P01, DATABASE_AWAY",
        "57P02, DATABASE_AWAY",
        "57P03, DATABASE_AWAY",
        "53300, DATABASE_AWAY",
        "25P03, DATABASE_AWAY",
        "57014, CONTENDED",
        "55P03, CONTENDED",
        "40P01, CONTENDED",
        "40001, CONTENDED",
        "53100, STORAGE_FULL",
        "53200, STORAGE_FULL",
        "58030, STORAGE_FULL",
        "25006, READ_ONLY"
    })
    void aCodeTellsTheOutageHoweverDeepItIsWrapped(String code, Outage outage) {
        SQLException failure = new SQLException("said by the server", code);
        assertThat(Outage.of(failure)).contains(outage);
        assertThat(Outage.of(new IllegalStateException(new RuntimeException(failure))))
                .contains(outage);
    }

    @ParameterizedTest
    @CsvSource({"23505", "22P02", "42P01", "XX000", "''"})
    void whatIsOurOwnFaultIsNoOutage(String code) {
        assertThat(Outage.of(new SQLException("ours", code))).isEmpty();
        assertThat(Outage.of(new SQLException("no code at all"))).isEmpty();
        assertThat(Outage.of(new IllegalStateException("no space left for a joke")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"No space left on device", "/tmp/upload: Disk quota exceeded", "There is not enough space on the disk"})
    void theOperatingSystemTellsOfAFullDisk(String said) {
        assertThat(Outage.of(new UncheckedIOException(new IOException(said)))).contains(Outage.STORAGE_FULL);
        assertThat(Outage.of(new IOException("Broken pipe"))).isEmpty();
    }

    @Test
    void aPoolThatHasNoConnectionIsADatabaseAway() {
        assertThat(Outage.of(new SQLTransientConnectionException("pool - Connection is not available")))
                .contains(Outage.DATABASE_AWAY);
        assertThat(Outage.of(new IllegalStateException("Unable to rollback", new SQLException("Connection is closed"))))
                .contains(Outage.DATABASE_AWAY);
    }

    @Test
    void aQueueThatIsFullIsCrowding() {
        assertThat(Outage.of(new IllegalStateException(new Crowded("eight wait"))))
                .contains(Outage.CONTENDED);
    }

    @Test
    void whatABatchHangsBehindItselfCounts() {
        BatchUpdateException batch = new BatchUpdateException("batch entry 3", "00000", 0, new int[0]);
        batch.setNextException(new SQLException("could not extend file", "53100"));
        assertThat(Outage.of(new RuntimeException(batch))).contains(Outage.STORAGE_FULL);
    }

    @Test
    void aFullDiskExplainsALostConnection() {
        SQLException lost = new SQLException("connection lost", "08006");
        lost.initCause(new IOException("No space left on device"));
        assertThat(Outage.of(lost)).contains(Outage.STORAGE_FULL);
    }

    @Test
    void aChainThatBitesItsTailEnds() {
        Exception one = new Exception("one");
        Exception two = new Exception("two", one);
        one.initCause(two);
        assertThat(Outage.of(one)).isEmpty();
    }

    @Test
    void aDatabaseOfOurOwnReadsOnlyWhereItsDiskIsNearlyFull() {
        SQLException readOnly = new SQLException("cannot execute INSERT in a read-only transaction", "25006");
        assertThat(new Outages(() -> true).of(readOnly)).contains(Outage.STORAGE_FULL);
        assertThat(new Outages(() -> false).of(readOnly)).contains(Outage.READ_ONLY);
    }
}
