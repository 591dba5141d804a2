package campcloth.errand;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.advice.Verdict;
import campcloth.advice.Warning;
import campcloth.advice.Warning.Severity;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.fire.FireCautions;
import campcloth.fire.RuleOutcome;
import campcloth.garment.Scrap;
import campcloth.garment.SewnBy;
import campcloth.plan.CuttingPlan;
import campcloth.plan.GarmentWork;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ErrandSheetTest {

    private static final ErrandSheet TUNICS = ErrandSamples.sheet(ErrandSamples.tunic(Instant.EPOCH));

    @Test
    void itNamesWhatWasAskedFor() {
        assertThat(TUNICS.title()).isEqualTo("Tunics for the cooks");
        assertThat(TUNICS.event()).isEqualTo("Wendlow river camp");
        assertThat(TUNICS.design()).isEqualTo("Tunic");
        assertThat(TUNICS.count()).isEqualTo(2);
    }

    @Test
    void whatSaysStopComesFirst() {
        ErrandDraw.always(drawn -> {
            List<Severity> severities = drawn.sheet().heed().warnings().stream()
                    .map(Warning::severity)
                    .toList();
            assertThat(severities).isSortedAccordingTo((a, b) -> b.compareTo(a));
            assertThat(drawn.sheet().heed().event())
                    .startsWith(FireCautions.RULES_WIN)
                    .contains(FireCautions.FIRST_AID, FireCautions.FIRE_BAN);
            assertThat(drawn.sheet().heed().fires()).hasSize(1).allMatch(fire -> fire.keepAwayM() >= 1);
        });
    }

    @Test
    void everySeamAndHemOfThePlanStandsInOneStep() {
        ErrandDraw.always(drawn -> {
            List<Object> sewn = new ArrayList<>();
            drawn.sheet()
                    .garments()
                    .forEach(garment -> garment.order().forEach(line -> {
                        sewn.addAll(line.seams());
                        sewn.addAll(line.hems());
                    }));
            List<Object> planned = new ArrayList<>();
            drawn.plan().seams().forEach(seam -> planned.add(seam.seam()));
            drawn.plan().hems().forEach(hem -> planned.add(hem.hem()));
            assertThat(sewn).containsExactlyInAnyOrderElementsOf(planned);
            drawn.sheet().garments().forEach(garment -> {
                assertThat(garment.order()).allMatch(line -> !line.because().isBlank());
                assertThat(garment.order().stream().map(SewingLine::number))
                        .containsExactlyElementsOf(Stream.iterate(1, n -> n + 1)
                                .limit(garment.order().size())
                                .toList());
            });
        });
    }

    @Test
    void whatIsToBuyIsWhatThePlanReckons() {
        ErrandDraw.always(drawn -> {
            ShoppingItem cloth = only(drawn.sheet(), ShoppingItem.Kind.CLOTH).get(0);
            assertThat(cloth.amount())
                    .startsWith(campcloth.figure.Words.number(drawn.plan().buyLengthCm()) + " cm, ");
            assertThat(cloth.cost()).isEqualTo(drawn.plan().cost());
            assertThat(cloth.name()).startsWith(drawn.errand().cloth().cloth().name());
            assertThat(only(drawn.sheet(), ShoppingItem.Kind.CLOTH_AT_MOST))
                    .hasSize(drawn.plan().buyLengthHighCm() > drawn.plan().buyLengthCm() ? 1 : 0);
            assertThat(only(drawn.sheet(), ShoppingItem.Kind.THREAD)).hasSize(1);
            ShoppingItem needle = only(drawn.sheet(), ShoppingItem.Kind.NEEDLE).get(0);
            assertThat(needle.name().startsWith("Hand")).isEqualTo(drawn.by() == SewnBy.HAND);
            assertThat(only(drawn.sheet(), ShoppingItem.Kind.SCRAP)).hasSize(scraps(drawn.plan()));
            assertThat(only(drawn.sheet(), ShoppingItem.Kind.SEWN_IN))
                    .hasSize(drawn.errand().garment().outfit().parts().size());
        });
    }

    /** Scraps of one size stand together. */
    private static int scraps(CuttingPlan plan) {
        return (int) plan.making().orElseThrow().garments().stream()
                .flatMap(work -> work.scraps().orElseThrow().stream())
                .map(scrap -> List.of(scrap.name(), Scrap.sideCm(scrap.acrossCm()), Scrap.sideCm(scrap.alongCm())))
                .distinct()
                .count();
    }

    @Test
    void aSpoolIsBoughtWhole() {
        ShoppingItem thread = only(TUNICS, ShoppingItem.Kind.THREAD).get(0);
        double metres = ErrandSamples.plan(ErrandSamples.tunic(Instant.EPOCH), true, SewnBy.MACHINE)
                .threadM();
        assertThat(metres).isBetween(200.0, 300.0);
        assertThat(thread.amount()).endsWith(" m: 3 spools of 100 m");
        assertThat(thread.name()).contains("cotton or linen");
        assertThat(thread.because()).contains("can melt");
    }

    @Test
    void theLongerLengthCostsMore() {
        ShoppingItem most = only(TUNICS, ShoppingItem.Kind.CLOTH_AT_MOST).get(0);
        ShoppingItem cloth = only(TUNICS, ShoppingItem.Kind.CLOTH).get(0);
        assertThat(most.because()).contains("% along", "% across");
        assertThat(most.cost().orElseThrow().amount())
                .isGreaterThan(cloth.cost().orElseThrow().amount());
    }

    @Test
    void sentencesAreSentences() {
        ErrandDraw.always(drawn -> {
            ErrandSheet sheet = drawn.sheet();
            Stream<String> sentences = Stream.of(
                            sheet.buy().stream().map(ShoppingItem::because),
                            sheet.kit().stream().map(KitItem::because),
                            sheet.beforeCutting().stream().flatMap(step -> Stream.of(step.what(), step.because())),
                            sheet.garments().stream().flatMap(garment -> garment.throughout().stream()),
                            sheet.garments().stream()
                                    .flatMap(garment -> garment.order().stream())
                                    .flatMap(line -> Stream.of(line.what(), line.because())),
                            sheet.toAsk().stream().map(OpenQuestion::because),
                            sheet.toAsk().stream().map(OpenQuestion::question))
                    .flatMap(stream -> stream);
            assertThat(sentences)
                    .allSatisfy(sentence -> assertThat(sentence)
                            .matches("(?s)[A-Z0-9\"].*[.?]")
                            .doesNotContain("null", "Optional", "  ", "..", " ,", "NaN"));
            assertThat(sheet.toString().toLowerCase(java.util.Locale.ROOT))
                    .doesNotContain("fireproof", "certified", "compliant");
        });
    }

    @Test
    void figuresOfTheClothCarryTheirSource() {
        ErrandDraw.always(drawn -> {
            assertThat(only(drawn.sheet(), ShoppingItem.Kind.CLOTH).get(0).because())
                    .contains("source ");
            assertThat(only(drawn.sheet(), ShoppingItem.Kind.NEEDLE).get(0).because())
                    .contains("source ");
        });
    }

    @Test
    void theKitGoesByHandAndCloth() {
        assertThat(names(TUNICS))
                .contains("Iron", "Pressing cloth", "A hand needle")
                .doesNotContain("Clips");
        Errand errand = ErrandSamples.tunic(Instant.EPOCH);
        ErrandSheet byHand = ErrandSamples.SHEETS.of(errand, ErrandSamples.plan(errand, true, SewnBy.HAND));
        assertThat(names(byHand)).contains("Hand needles and a thimble").noneMatch(name -> name.contains("machine"));
        ErrandSheet waxed = of("tunic", closed());
        assertThat(names(waxed)).contains("Clips").doesNotContain("Iron", "Pressing cloth", "Pins");
        assertThat(waxed.beforeCutting()).anyMatch(step -> step.what().startsWith("Do not wash"));
        assertThat(waxed.beforeCutting()).noneMatch(step -> step.what().startsWith("Press"));
        assertThat(waxed.toAsk()).noneMatch(question -> question.question().contains("shrink"));
    }

    @Test
    void clothThatMayMeltIsPressedCool() {
        ErrandSheet polyester = of(
                "tunic",
                ShippedIds.first(cloth -> cloth.blend().percentOf("polyester") == 100
                        && !cloth.finish().closesPores()
                        && !cloth.weave().isPile()
                        && !cloth.stretch()));
        assertThat(polyester.kit())
                .anyMatch(item -> item.name().equals("Iron") && item.because().startsWith("Cool"));
        assertThat(polyester.verdict()).isEqualTo(Verdict.RULED_OUT);
        assertThat(polyester.rules().outcomes().get(0).outcome()).isEqualTo(RuleOutcome.Outcome.FORBIDDEN);
        assertThat(polyester.heed().warnings().get(0).severity()).isEqualTo(Severity.STOP);
    }

    @Test
    void whatIsSewnInIsJudgedAtTheFireToo() {
        String melts = ShippedIds.first(cloth -> cloth.blend().percentOf("polyester") == 100);
        Errand plain = ErrandSamples.errand("tunic", "linen-plain-340", ErrandSamples.camp(), Outfit.UNTOLD);
        Outfit lined = new Outfit(List.of(new OutfitPart(
                Kind.LINING, Optional.of(ErrandSamples.cloth(melts).cloth()), Optional.empty())));
        AtTheFire alone = ErrandSamples.sheet(plain).heed().fires().get(0);
        AtTheFire with = ErrandSamples.sheet(
                        ErrandSamples.errand("tunic", "linen-plain-340", ErrandSamples.camp(), lined))
                .heed()
                .fires()
                .get(0);
        assertThat(with.grade()).isGreaterThan(alone.grade());
        assertThat(with.keepAwayM()).isGreaterThan(alone.keepAwayM());
    }

    @Test
    void aPlanOfOldTellsItsStepsAsFarAsItKnowsThem() {
        Errand errand = ErrandSamples.tunic(Instant.EPOCH);
        CuttingPlan plan = ErrandSamples.plan(errand, true, SewnBy.MACHINE);
        ErrandSheet sheet = ErrandSamples.SHEETS.of(errand, Old.plan(plan));
        GarmentWork work = plan.making().orElseThrow().garments().get(0);
        assertThat(sheet.garments().get(0).order().stream().map(SewingLine::what))
                .containsExactlyElementsOf(work.steps());
        assertThat(only(sheet, ShoppingItem.Kind.SCRAP)).isEmpty();
        assertThat(ErrandSamples.SHEETS.of(errand, Old.planWithoutMaking(plan)).garments())
                .isEmpty();
    }

    private static String closed() {
        return ShippedIds.first(cloth -> cloth.finish().closesPores() && !cloth.stretch());
    }

    private static ErrandSheet of(String design, String clothId) {
        return ErrandSamples.sheet(ErrandSamples.errand(design, clothId, ErrandSamples.camp(), Outfit.UNTOLD));
    }

    private static List<ShoppingItem> only(ErrandSheet sheet, ShoppingItem.Kind kind) {
        return sheet.buy().stream().filter(item -> item.kind() == kind).toList();
    }

    private static List<String> names(ErrandSheet sheet) {
        return sheet.kit().stream().map(KitItem::name).toList();
    }
}
