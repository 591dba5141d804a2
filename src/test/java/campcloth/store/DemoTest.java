package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.demo.DemoThing;
import campcloth.demo.DemoThing.Kind;
import campcloth.demo.DemoThing.Standing;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.journey.WholeService;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.TestPropertySource;

/** The demo is put in once, on an empty database; it never takes away or replaces what somebody made theirs. */
@WholeService
@TestPropertySource(properties = {"campcloth.demo=true", "a.database=of this class alone"})
@DirtiesContext
class DemoTest {

    @Autowired
    private DemoInPostgres demo;

    @Autowired
    private Events events;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Seasons seasons;

    @Autowired
    private JdbcTemplate sql;

    @BeforeEach
    void asOnTheFirstDay() {
        sql.execute("delete from demo_thing");
        sql.execute("delete from demo_decided");
        sql.execute("delete from event_rules");
        sql.execute("delete from event");
        sql.execute("delete from cloth where origin = 'OWN'");
    }

    @Test
    void theFirstStartOnAnEmptyDatabasePutsItIn() {
        demo.decide();
        assertThat(demo.things()).hasSize(4).allMatch(thing -> thing.standing() == Standing.AS_PUT_IN);
        assertThat(demo.things().get(0).kind()).isEqualTo(Kind.EVENT);
        assertThat(events.latest(0, 10).total()).isEqualTo(1);
        demo.decide();
        assertThat(events.latest(0, 10).total()).isEqualTo(1);
    }

    @Test
    void onceRemovedNoLaterStartBringsItBack() {
        demo.decide();
        demo.remove();
        assertThat(demo.things()).hasSize(4).allMatch(thing -> thing.standing() == Standing.REMOVED);
        assertThat(events.latest(0, 10).total()).isZero();
        demo.decide();
        assertThat(events.latest(0, 10).total()).isZero();
        assertThat(demo.bringBack()).hasSize(4).allMatch(thing -> thing.standing() == Standing.AS_PUT_IN);
        assertThat(events.latest(0, 10).total()).isEqualTo(1);
    }

    @Test
    void aDatabaseWithSomethingOfItsOwnGetsNone() {
        events.add(new Event("ours", Season.SUMMER, seasons.spells(Season.SUMMER), List.of()));
        demo.decide();
        assertThat(demo.things()).isEmpty();
        sql.execute("delete from event_rules");
        sql.execute("delete from event");
        demo.decide();
        assertThat(demo.things()).isEmpty();
    }

    @Test
    void whatSomebodyChangedStaysAndIsNotPutInTwice() {
        demo.decide();
        DemoThing event = demo.things().get(0);
        events.replace(
                event.id(), 0, events.byId(event.id()).orElseThrow().event().at(50));
        KeptCloth cloth = cloths.byId(demo.things().get(3).id()).orElseThrow();
        cloths.replace(cloth.id(), cloth.version(), Renamed.named("mine now", cloth.cloth()));
        assertThat(demo.remove())
                .extracting(DemoThing::standing)
                .containsExactly(Standing.CHANGED, Standing.REMOVED, Standing.REMOVED, Standing.CHANGED);
        assertThat(events.byId(event.id())).isPresent();
        assertThat(cloths.byId(cloth.id())).isPresent();
        assertThat(demo.bringBack())
                .extracting(DemoThing::standing)
                .containsExactly(Standing.CHANGED, Standing.AS_PUT_IN, Standing.AS_PUT_IN, Standing.CHANGED);
        assertThat(events.latest(0, 10).total()).isEqualTo(1);
    }

    @Test
    void whatSomebodyRemovedByHandCountsAsRemoved() {
        demo.decide();
        DemoThing event = demo.things().get(0);
        events.remove(event.id(), 0);
        assertThat(demo.things().get(0).standing()).isEqualTo(Standing.REMOVED);
        assertThat(demo.bringBack().get(0).id()).isNotEqualTo(event.id());
    }
}
