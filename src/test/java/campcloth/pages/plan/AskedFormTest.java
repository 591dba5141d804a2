package campcloth.pages.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.cloth.Outfit;
import campcloth.cloth.ShippedCatalogue;
import campcloth.event.Event;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.figure.Refused;
import campcloth.garment.Designs;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What season, simple day and garment become. */
class AskedFormTest {

    private static final ShippedCatalogue CATALOGUE = ShippedCatalogue.get();

    private final AskedForm form = new AskedForm();

    @Test
    void seasonAlonePresumesItsSpells() {
        form.season = Season.SUMMER;
        Event event = told();
        assertThat(event.spellsPresumed()).isTrue();
        assertThat(event.spells()).isEqualTo(CATALOGUE.seasons().spells(Season.SUMMER));
        assertThat(form.tellsDay()).isFalse();
    }

    @Test
    void oneFigureTellsADayAndTheRestIsUsual() {
        form.season = Season.SUMMER;
        form.day.airC = 33.0;
        form.night.sun = Sun.NONE;
        Event event = told();
        SimpleDay usual = SimpleDay.usual(Season.SUMMER, CATALOGUE.seasons());
        assertThat(event.spellsPresumed()).isFalse();
        assertThat(event.spells()).hasSize(3);
        assertThat(event.spells().get(0).airC()).isEqualTo(33);
        assertThat(event.spells().get(0).windMs()).isEqualTo(usual.day().windMs());
        assertThat(event.spells().subList(1, 3)).containsExactly(usual.evening(), usual.night());
    }

    @Test
    void fireIsTheUsualOneAnotherOrNone() {
        form.season = Season.SUMMER;
        form.evening.fireKind = FireKind.BONFIRE;
        assertThat(evening().fire())
                .contains(new OpenFire(
                        FireRole.SEATED, Optional.of(2.0), Optional.empty(), Optional.of(FireKind.BONFIRE)));
        form.evening.fireRole = FireRole.COOKING;
        assertThat(evening().fire())
                .contains(new OpenFire(
                        FireRole.COOKING, Optional.empty(), Optional.empty(), Optional.of(FireKind.BONFIRE)));
        form.evening.fireRole = FireRole.NONE;
        assertThat(evening().fire()).isEmpty();
    }

    @Test
    void everySeasonHasItsSimpleDay() {
        for (Season season : Season.values()) {
            SimpleDay usual = SimpleDay.usual(season, CATALOGUE.seasons());
            assertThat(usual.night().name()).isEqualTo("night");
            assertThat(usual.evening().fireInUse()).isPresent();
            assertThat(usual.day().airC()).isGreaterThan(usual.night().airC());
        }
    }

    @Test
    void whatIsRefusedIsToldAtItsField() {
        assertThat(refusedField(this::told)).isEqualTo("season");
        form.season = Season.WINTER;
        form.night.airC = -80.0;
        assertThat(refusedField(this::told)).isEqualTo("night.airC");
        form.night.airC = null;
        form.evening.fireDistanceM = 0.01;
        assertThat(refusedField(this::told)).isEqualTo("evening.fireDistanceM");
        assertThat(refusedField(form::garment)).isEqualTo("design");
        form.design = "spacesuit";
        assertThat(refusedField(form::garment)).isEqualTo("design");
        form.design = "tunic";
        form.size = "XXXL";
        assertThat(refusedField(() -> form.measurements(CATALOGUE.sizes()))).isEqualTo("size");
        form.size = null;
        form.evening.fireDistanceM = null;
        form.measures.put("chestCm", 900.0);
        assertThat(refusedField(() ->
                        form.asking(told(), CATALOGUE.sizes(), Outfit.UNTOLD).about(List::of)))
                .isEqualTo("measures[chestCm]");
    }

    @Test
    void onlyWhatTheDesignNeedsIsTakenOfTheMeasures() {
        form.design = "apron";
        form.measures.put("waistCm", 84.0);
        form.measures.put("sleeveLengthCm", 60.0);
        form.measures.put("<script>", 1.0);
        form.measures.put("lengthCm", null);
        assertThat(form.garment().wearerCm()).containsOnlyKeys("waistCm");
        assertThat(Designs.named("apron").measurements()).anyMatch(m -> m.key().equals("waistCm"));
    }

    private Event told() {
        return form.event(new NoEvents(), CATALOGUE.seasons()).event();
    }

    private Spell evening() {
        return told().spells().get(1);
    }

    private static String refusedField(Runnable asked) {
        Refused[] refused = new Refused[1];
        assertThatThrownBy(asked::run).isInstanceOfSatisfying(Refused.class, caught -> refused[0] = caught);
        return AskedForm.field(refused[0].refusals().get(0).field());
    }
}
