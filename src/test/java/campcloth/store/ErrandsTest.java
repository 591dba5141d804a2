package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.errand.Errand;
import campcloth.errand.ErrandSamples;
import campcloth.errand.Errands;
import campcloth.errand.KeptErrand;
import campcloth.journey.WholeService;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Errands are kept as they were, listed newest first, and go when they are removed. */
@WholeService
class ErrandsTest {

    @Autowired
    private Errands errands;

    private final List<KeptErrand> made = new ArrayList<>();

    /** Some are of days to come, and would be the newest of all in the lists of other tests. */
    @AfterEach
    void removeAll() {
        made.forEach(kept -> errands.remove(kept.id()));
    }

    private KeptErrand add(Errand errand) {
        KeptErrand kept = errands.add(errand);
        made.add(kept);
        return kept;
    }

    @Test
    void whatIsKeptComesBackAsItWas() {
        Errand errand = ErrandSamples.tunic(Instant.parse("2027-05-02T09:30:00.123456Z"));
        KeptErrand kept = add(errand);
        assertThat(kept.errand()).isEqualTo(errand);
        assertThat(errands.byId(kept.id())).contains(kept);
        assertThat(add(errand).id()).isNotEqualTo(kept.id());
    }

    @Test
    void theNewestComesFirstAndNoMoreThanAskedFor() {
        Instant late = Instant.parse("2997-01-01T00:00:00Z");
        KeptErrand older = add(ErrandSamples.tunic(late));
        KeptErrand newest = add(ErrandSamples.tunic(late.plusSeconds(60)));
        KeptErrand oldest = add(ErrandSamples.tunic(late.minusSeconds(60)));
        assertThat(errands.latest(3)).containsExactly(newest, older, oldest);
        assertThat(errands.latest(2)).containsExactly(newest, older);
        List<KeptErrand> all = new ArrayList<>();
        errands.each(all::add);
        assertThat(all).endsWith(oldest, older, newest);
    }

    @Test
    void aGroupIsReadAsItWasKept() {
        Errand group = ErrandSamples.group(Instant.parse("2027-05-02T09:30:00Z"));
        KeptErrand kept = add(group);
        assertThat(errands.byId(kept.id()).map(KeptErrand::errand)).contains(group);
    }

    @Test
    void whatIsRemovedIsGoneOnce() {
        KeptErrand kept = add(ErrandSamples.tunic(Instant.parse("2027-05-02T09:30:00Z")));
        KeptErrand other = add(ErrandSamples.tunic(Instant.parse("2027-05-02T09:30:00Z")));
        assertThat(errands.remove(kept.id())).isTrue();
        assertThat(errands.byId(kept.id())).isEmpty();
        assertThat(errands.remove(kept.id())).isFalse();
        assertThat(errands.byId(other.id())).contains(other);
    }

    @Test
    void whatHasNoIdOfOursIsNotThere() {
        assertThat(errands.byId("1")).isEmpty();
        assertThat(errands.byId(UUID.randomUUID().toString())).isEmpty();
        assertThat(errands.remove("'; drop table errand; --")).isFalse();
    }
}
