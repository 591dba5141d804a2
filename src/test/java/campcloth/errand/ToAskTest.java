package campcloth.errand;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Outfit;
import campcloth.cloth.Property;
import campcloth.errand.OpenQuestion.About;
import campcloth.event.Event;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Spell;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a sheet tells people to ask, and of whom. */
class ToAskTest {

    private static final ErrandSheet TUNICS = ErrandSamples.sheet(ErrandSamples.tunic(Instant.EPOCH));

    @Test
    void authoritiesWithoutARuleAreToBeAsked() {
        assertThat(about(TUNICS, About.AUTHORITY)).hasSize(2).noneMatch(question -> question.contains("the event's"));
        Event all = ErrandSamples.camp()
                .withRules(List.of(
                        RuleDraft.of(Authority.EVENT, "Wool or linen").rule(),
                        RuleDraft.of(Authority.VENUE, "No capes")
                                .askAbout("what counts as a cape")
                                .rule(),
                        RuleDraft.of(Authority.LOCAL_LAW, "No open fire in a drought")
                                .rule()));
        ErrandSheet sheet = ErrandSamples.sheet(ErrandSamples.errand("tunic", "linen-plain-185", all, Outfit.UNTOLD));
        assertThat(about(sheet, About.AUTHORITY)).isEmpty();
        assertThat(about(sheet, About.RULE)).anyMatch(question -> question.contains("No capes"));
        assertThat(sheet.rules().outcomes()).hasSize(3);
    }

    @Test
    void rulesThatNoClothKeepsAllOfAreShownAndAsked() {
        Event torn = ErrandSamples.camp()
                .withRules(List.of(
                        RuleDraft.of(Authority.EVENT, "Wool alone")
                                .allowingOnly(java.util.Set.of("wool"))
                                .rule(),
                        RuleDraft.of(Authority.VENUE, "Linen alone")
                                .allowingOnly(java.util.Set.of("flax"))
                                .rule()));
        ErrandSheet sheet = ErrandSamples.sheet(ErrandSamples.errand("tunic", "linen-plain-185", torn, Outfit.UNTOLD));
        assertThat(sheet.rules().conflicts()).isNotEmpty();
        assertThat(about(sheet, About.RULE)).anyMatch(q -> q.contains("Wool alone") && q.contains("Linen alone"));
    }

    @Test
    void whatWasPresumedOfTheEventIsToBeAsked() {
        Event camp = ErrandSamples.camp();
        assertThat(about(TUNICS, About.EVENT)).containsExactly("How big is the fire in \"supper\"?");
        Event presumed = new Event(camp.name(), Season.SUMMER, camp.spells(), camp.rules(), true);
        ErrandSheet sheet =
                ErrandSamples.sheet(ErrandSamples.errand("tunic", "linen-plain-185", presumed, Outfit.UNTOLD));
        assertThat(about(sheet, About.EVENT)).anyMatch(question -> question.contains("forecast"));
        Spell noon = camp.spells().get(0);
        Event noFire = new Event(camp.name(), Season.SUMMER, List.of(noon), camp.rules());
        ErrandSheet cold = ErrandSamples.sheet(ErrandSamples.errand("tunic", "linen-plain-185", noFire, Outfit.UNTOLD));
        assertThat(about(cold, About.EVENT)).isEmpty();
        assertThat(cold.heed().fires()).isEmpty();
        assertThat(only(cold, ShoppingItem.Kind.THREAD).get(0).name()).doesNotContain("linen");
    }

    @Test
    void estimatesThatMatterAreToBeAskedAndMeasuresAreNot() {
        var known = ErrandSamples.anyCloth().cloth();
        var bare = new campcloth.cloth.Cloth(
                "found in a chest",
                known.blend(),
                known.weave(),
                known.surface(),
                known.finish(),
                false,
                false,
                Map.of(),
                "",
                FlameTreatment.NONE);
        Errand errand = new Errand(
                "From a chest",
                TakenEvent.told(ErrandSamples.camp()),
                WantedGarment.usual("apron", Map.of()),
                new ChosenCloth("chest", bare),
                "plan",
                Instant.EPOCH);
        assertThat(about(ErrandSamples.sheet(errand), About.CLOTH))
                .anyMatch(question -> question.contains("shrink"))
                .anyMatch(question -> question.contains("wide"))
                .anyMatch(question -> question.contains("heavy"))
                .anyMatch(question -> question.contains("swatch: thickness"));
        assertThat(known.required(Property.WIDTH_CM)).isNotNull();
        assertThat(about(TUNICS, About.CLOTH))
                .noneMatch(question -> question.contains("wide"))
                .noneMatch(question -> question.contains("heavy"));
    }

    @Test
    void whoIsMeasuredIsNotAskedAgain() {
        assertThat(about(TUNICS, About.WEARER).get(0)).contains("neck opening").doesNotContain("shoulder to hem");
        assertThat(TUNICS.toAsk().stream().map(OpenQuestion::about).toList()).isSorted();
    }

    private static List<ShoppingItem> only(ErrandSheet sheet, ShoppingItem.Kind kind) {
        return sheet.buy().stream().filter(item -> item.kind() == kind).toList();
    }

    private static List<String> about(ErrandSheet sheet, About about) {
        return sheet.toAsk().stream()
                .filter(question -> question.about() == about)
                .map(OpenQuestion::question)
                .toList();
    }
}
