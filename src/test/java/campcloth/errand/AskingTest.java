package campcloth.errand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.advice.Candidate;
import campcloth.advice.Ranking;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.garment.Measurements;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class AskingTest {

    private static final Event COLD = new Event(
            "Wendlow river camp",
            Season.WINTER,
            List.of(new Spell("market", 5, 2, 80, 6, Sun.NONE, Activity.STANDING, Optional.empty())),
            List.of());

    @Test
    void inTheColdAShirtIsPresumedBeneathButNotAtTheFire() {
        Asked asked = asking(COLD, Optional.empty(), Outfit.UNTOLD).about(List::of);
        assertThat(asked.question().wear().nextToSkin()).isFalse();
        assertThat(asked.question().wearAtFire().nextToSkin()).isTrue();
        assertThat(asked.presumed()).anyMatch(sentence -> sentence.contains("presumed over a shirt"));
    }

    @Test
    void whatSomebodySaidStands() {
        Asked asked = asking(COLD, Optional.of(true), Outfit.UNTOLD).about(List::of);
        assertThat(asked.question().wear().nextToSkin()).isTrue();
        assertThat(asked.presumed()).noneMatch(sentence -> sentence.contains("touches the skin"));
    }

    @Test
    void whatLiesBeneathKeepsItOffTheSkin() {
        Outfit shirt = new Outfit(List.of(new OutfitPart(Kind.SHIRT, Optional.empty(), Optional.empty())));
        Asked asked = asking(ErrandSamples.camp(), Optional.empty(), shirt).about(List::of);
        assertThat(asked.question().wear().nextToSkin()).isFalse();
        assertThat(asked.question().wearAtFire().nextToSkin()).isFalse();
        assertThat(asking(ErrandSamples.camp(), Optional.empty(), Outfit.UNTOLD)
                        .about(List::of)
                        .question()
                        .wear()
                        .nextToSkin())
                .isTrue();
    }

    @Test
    void refusalsAreNamedUnderTheGarment() {
        assertThatThrownBy(() -> Asking.design("toga"))
                .satisfies(thrown -> assertThat(fields(thrown)).containsExactly("garment.design"));
        Outfit night = new Outfit(List.of(
                new OutfitPart(Kind.HOOD, Optional.empty(), Optional.empty()),
                new OutfitPart(Kind.CLOAK, Optional.empty(), Optional.empty(), Set.of("night"))));
        assertThatThrownBy(() -> asking(COLD, Optional.empty(), night).about(List::of))
                .satisfies(thrown -> assertThat(fields(thrown)).containsExactly("garment.outfit[1].spells"));
        Asking giant = new Asking(
                COLD,
                Asking.design("tunic"),
                Measurements.of(Map.of("lengthCm", 900.0)),
                Optional.empty(),
                Outfit.UNTOLD);
        assertThatThrownBy(() -> giant.about(List::of))
                .satisfies(thrown -> assertThat(fields(thrown)).containsExactly("garment.wearer.lengthCm"));
    }

    @Test
    void clothsAreLookedUpOnlyWhereAllElseCanBeUsed() {
        AtomicBoolean looked = new AtomicBoolean();
        Outfit night =
                new Outfit(List.of(new OutfitPart(Kind.CLOAK, Optional.empty(), Optional.empty(), Set.of("night"))));
        assertThatThrownBy(() -> asking(COLD, Optional.empty(), night).about(() -> {
                    looked.set(true);
                    return List.<Candidate>of();
                }))
                .isInstanceOf(Refused.class);
        assertThat(looked).isFalse();
    }

    @Test
    void anErrandAsksAboutItsOneClothAndTellsWhatIsWornBesides() {
        Errand errand = ErrandSamples.tunic(Instant.EPOCH);
        Asked asked = errand.asked(campcloth.cloth.ShippedCatalogue.get().sizes());
        assertThat(asked.question().candidates())
                .containsExactly(
                        new Candidate(errand.cloth().id(), errand.cloth().cloth()));
        Ranking ranking = ErrandSamples.ADVISER.rank(asked.question());
        assertThat(asked.presumed(ranking))
                .startsWith(asked.presumed().toArray(String[]::new))
                .anyMatch(sentence -> sentence.startsWith("Worn besides the garment"));
    }

    private static Asking asking(Event event, Optional<Boolean> touchesSkin, Outfit outfit) {
        return new Asking(event, Asking.design("tunic"), Measurements.of(Map.of()), touchesSkin, outfit);
    }

    private static List<String> fields(Throwable thrown) {
        return ((Refused) thrown).refusals().stream().map(Refusal::field).toList();
    }
}
