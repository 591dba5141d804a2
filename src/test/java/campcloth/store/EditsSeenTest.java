package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.Judged;
import campcloth.advice.Question;
import campcloth.advice.Shortlist;
import campcloth.advice.UsualTraits;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Property;
import campcloth.cloth.ShippedCatalogue;
import campcloth.cloth.Wear;
import campcloth.event.Event;
import campcloth.event.Season;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** An edit is known to the whole program once it is kept, and to nobody before. */
class EditsSeenTest {

    private static final int EDITS = 20;

    /** So seldom that whatever comes into memory meanwhile was told of. */
    private static final Duration HARDLY_EVER = Duration.ofHours(1);

    private final ShippedCatalogue shipped = ShippedCatalogue.get();
    private final FireAdvice fire = new FireAdvice(new FireRules(shipped.fibres()));
    private final ClothTraiter traits = new UsualTraits(fire, shipped.seasons(), shipped.fibres());

    @Test
    void whatIsEditedOnOneInstanceRanksByItsNewFiguresOnTheOtherThoughNobodyAsks() {
        AtomicInteger looks = new AtomicInteger();
        try (IndexedDatabase a = new IndexedDatabase();
                IndexedDatabase b = new IndexedDatabase(a.database())) {
            a.write(shipped.cloths());
            ClothSnapshot atB = b.snapshot();
            Runnable look = () -> {
                looks.incrementAndGet();
                atB.bringUpToDate();
            };
            try (ClothWatch watch = b.watch(look, HARDLY_EVER)) {
                watch.start();
                Awaited.until(() -> atB.tickInMemory() == a.newestTick());
                long[] nanos = new long[EDITS];
                for (int edit = 0; edit < EDITS; edit++) {
                    Cloth cloth = edited(edit);
                    a.write(Map.of(anId(), cloth));
                    long tick = a.newestTick();
                    long start = System.nanoTime();
                    Awaited.until(() -> atB.tickInMemory() >= tick);
                    nanos[edit] = System.nanoTime() - start;
                    assertThat(cloth(atB)).isEqualTo(cloth);
                    assertThat(score(b, atB)).isEqualTo(score(cloth));
                }
                Arrays.sort(nanos);
                System.out.printf(
                        "an edit on one instance was in the memory of the other after %d ms at most, %d ms by the median%n",
                        nanos[EDITS - 1] / 1_000_000, nanos[EDITS / 2] / 1_000_000);
                assertThat(looks.get()).as("it looks when it is told").isBetween(EDITS, 2 * EDITS);
            }
        }
    }

    @Test
    void whatIsTakenBackIsSeenByNobodyElseAndHidesNothing() {
        try (IndexedDatabase a = new IndexedDatabase()) {
            a.write(shipped.cloths());
            ClothSnapshot snapshot = a.snapshot();
            snapshot.bringUpToDate();
            assertThatThrownBy(() -> a.writing(sql -> {
                        a.write(Map.of(anId(), edited(1)));
                        assertThat(cloth(snapshot)).isEqualTo(edited(1));
                        assertThat(snapshot.columns().cloths())
                                .isEqualTo(shipped.cloths().size());
                        throw new IllegalStateException("taken back");
                    }))
                    .hasMessage("taken back");
            assertThat(cloth(snapshot)).isEqualTo(shipped.cloths().get(anId()));
            a.write(Map.of(anId(), edited(2)));
            assertThat(cloth(snapshot)).isEqualTo(edited(2));
        }
    }

    private Cloth cloth(ClothSnapshot snapshot) {
        return snapshot.byIds(List.of(anId())).get(0).cloth();
    }

    private String anId() {
        return shipped.cloths().keySet().iterator().next();
    }

    private Cloth edited(int change) {
        return Objects.requireNonNull(shipped.cloths().get(anId()))
                .with(Property.WEIGHT_GSM, Figure.exact(100 + 10 * change, Basis.MEASURED, "own scales"));
    }

    private double score(IndexedDatabase at, ClothSnapshot snapshot) {
        Shortlist shortlist = new Shortlist(new Adviser(fire), at.cloths(snapshot, traits));
        return shortlist.rank(question(), ClothSearch.EVERYTHING, 20).ranking().judged().stream()
                .filter(judged -> judged.candidate().id().equals(anId()))
                .mapToDouble(Judged::score)
                .findFirst()
                .orElseThrow();
    }

    private double score(Cloth cloth) {
        Question alone = question().of(List.of(new Candidate("it", cloth)));
        return new Adviser(fire).rank(alone).judged().get(0).score();
    }

    private Question question() {
        Event event = new Event(
                "Wendlow river camp",
                Season.AUTUMN,
                shipped.seasons().spells(Season.AUTUMN).stream().limit(2).toList(),
                List.of());
        return new Question(event, new Wear(true, Layer.OUTER, Fit.LOOSE, false, 65, 1.7), List.of());
    }
}
