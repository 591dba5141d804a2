package campcloth.store;

import campcloth.access.Holding;
import campcloth.job.Failure;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobState;
import campcloth.job.KeptJob;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Reads rows of the table {@code job}. */
@Component
class JobRows {

    /** What a job is read from. */
    static final String COLUMNS =
            "id, kind, state, progress, attempts, cancel_asked, made_at, started_at, ended_at," + " owner, failure";

    static final String ALL_COLUMNS = COLUMNS + ", request, result, payload is not null as has_payload";

    private final Json json;

    JobRows(Json json) {
        this.json = json;
    }

    Job job(ResultSet row) throws SQLException {
        return new Job(
                row.getObject("id", UUID.class),
                JobKind.valueOf(row.getString("kind")),
                JobState.valueOf(row.getString("state")),
                progress(row.getString("progress")),
                row.getInt("attempts"),
                row.getBoolean("cancel_asked"),
                row.getTimestamp("made_at").toInstant(),
                instant(row.getTimestamp("started_at")),
                instant(row.getTimestamp("ended_at")),
                new Holding(Optional.ofNullable(row.getObject("owner", UUID.class)), Optional.empty()),
                Optional.ofNullable(row.getString("failure")).map(text -> json.read(text, Failure.class)));
    }

    KeptJob kept(ResultSet row) throws SQLException {
        return new KeptJob(
                job(row),
                row.getString("request"),
                Optional.ofNullable(row.getString("result")),
                row.getBoolean("has_payload"));
    }

    private Map<String, Double> progress(String text) {
        Map<?, ?> read = json.read(text, Map.class);
        return read.entrySet().stream()
                .collect(Collectors.toMap(
                        entry -> String.valueOf(entry.getKey()), entry -> ((Number) entry.getValue()).doubleValue()));
    }

    private static Optional<Instant> instant(@Nullable Timestamp time) {
        return Optional.ofNullable(time).map(Timestamp::toInstant);
    }
}
