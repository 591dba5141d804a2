package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Asker;
import campcloth.access.KeyedCall;
import campcloth.access.KeyedCalls;
import campcloth.access.KeyedCalls.Start;
import campcloth.access.NewIds;
import campcloth.access.Turn;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.job.Pace;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.PlatformTransactionManager;

/** Calls with keys on a real database, and instances that begin them, each of which makes an event. */
@WithoutWorkers
abstract class KeyedCallsBench {

    @Autowired
    Environment database;

    @Autowired
    JdbcTemplate sql;

    @Autowired
    PlatformTransactionManager transactions;

    @Autowired
    Json json;

    @Autowired
    NewIds ids;

    @Autowired
    Events events;

    @Autowired
    Seasons seasons;

    @Autowired
    Fence fence;

    private final List<Instance> begun = new ArrayList<>();

    /** The calls of one instance, and the line by which others see it. */
    record Instance(KeyedCalls calls, OtherInstance line, CallsAtWork atWork) {

        /** The call is begun here. */
        Turn turn(KeyedCall call) {
            return ((Start.First) calls.begin(call)).turn();
        }
    }

    Instance instance(Pace pace) {
        return instance(pace, transactions);
    }

    Instance instance() {
        return instance(WorkedJobs.BRISK);
    }

    /** No beat goes by itself. */
    Instance instance(Pace pace, PlatformTransactionManager through) {
        OtherInstance line = new OtherInstance(database);
        CallsAtWork atWork = new CallsAtWork(sql, line.presence(), pace);
        KeyedCalls calls = new KeyedCallsInPostgres(sql, through, json, atWork, line.presence(), pace);
        Instance instance = new Instance(calls, line, atWork);
        begun.add(instance);
        return instance;
    }

    @AfterEach
    void allEnd() {
        begun.forEach(instance -> {
            instance.atWork().stop();
            instance.line().close();
        });
        begun.clear();
    }

    static KeyedCall call() {
        return new KeyedCall(Asker.LOCAL, "make an event", UUID.randomUUID().toString(), "the same");
    }

    KeptEvent made(Turn turn) {
        return ids.under(turn, () -> events.add(event(turn.seed().toString())));
    }

    Event event(String name) {
        return new Event(name, Season.SPRING, seasons.spells(Season.SPRING), List.of());
    }

    long kept(Turn turn) {
        Long found = sql.queryForObject(
                "select count(*) from event where body ->> 'name' = ?",
                Long.class,
                turn.seed().toString());
        return found == null ? -1 : found;
    }

    /** As though nothing had been heard for so long of the claim under which the call is worked on. */
    void silentFor(Turn turn, int minutes) {
        int claims = sql.update(
                "update keyed_call set busy_until = busy_until - make_interval(mins => ?) where claim = ?",
                minutes,
                turn.claim());
        assertThat(claims).isEqualTo(1);
    }
}
