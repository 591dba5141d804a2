package campcloth.fire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.event.Event;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.figure.PictureRules;
import campcloth.figure.Shown;
import campcloth.figure.SvgText;
import campcloth.fire.FireRing.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class StandBackDrawingTest {

    private static final FireAdvice ADVICE = new FireAdvice(new FireRules(FireFixtures.FIBRES));
    private static final OpenFire CAMPFIRE =
            new OpenFire(FireRole.SEATED, Optional.of(2.0), Optional.empty(), Optional.of(FireKind.CAMPFIRE));
    private static final SafetyRule KEEP = RuleDraft.of(Authority.VENUE, "Keep five metres from the fire")
            .keepAtLeast(5)
            .rule();
    private static final SafetyRule NEAR = RuleDraft.of(Authority.EVENT, "Near the fire no synthetics")
            .mostMeltable(0)
            .within(Optional.of(3.5))
            .rule();
    private static final SafetyRule FAR =
            RuleDraft.of(Authority.LOCAL_LAW, "Far").within(Optional.of(200.0)).rule();

    private static FirePlan plan(String blend, List<SafetyRule> rules, OpenFire fire) {
        Event event = FireFixtures.event(rules, fire);
        return FirePlan.all(ADVICE.judge(FireFixtures.plain(blend, 150), event), rules)
                .get(0);
    }

    @Test
    void everyDistanceIsToldAndDrawnToScale() throws Exception {
        FirePlan plan = plan("polyester 100", List.of(KEEP, NEAR, FAR), CAMPFIRE);
        String svg = Shown.kept("fire-cloth", StandBackDrawing.svg(plan));
        PictureRules picture =
                PictureRules.read(svg, "campfire").readableOnAPhone().wordsKeepTheirPlaces();
        assertThat(plan.rings())
                .extracting(FireRing::kind)
                .containsExactly(
                        Kind.FLAMES,
                        Kind.SPARKS,
                        Kind.WEARER,
                        Kind.CLOTH,
                        Kind.RULE_KEEP,
                        Kind.RULE_REACH,
                        Kind.RULE_REACH);
        List<Double> radii = radii(picture);
        for (FireRing ring : plan.rings()) {
            if (ring.metres() < 100) {
                double expected = ring.metres() / 5 * 138;
                assertThat(radii).as(ring.words()).anySatisfy(r -> assertThat(r).isCloseTo(expected, within(0.01)));
            }
        }
        assertThat(picture.words()).contains("2 m", "3 m", "5 m", "3.5 m", "200 m");
        assertThat(String.join(" ", picture.words())).contains("too far off", "The wearer is nearer", "marshal");
        assertThat(StandBackDrawing.text(plan))
                .contains("A campfire counted as 50 kW, fireside 1.", FireCautions.RULES_WIN)
                .contains("The wearer is nearer than the least distance for this cloth.")
                .contains("The wearer is nearer than the 5 m that a rule asks for.")
                .anyMatch(s -> s.startsWith("Rule of the venue: \"Keep five metres from the fire\""));
    }

    @Test
    void whoeverLaysOutThePlaceSeesTheRulesForAll() throws Exception {
        SafetyRule cooks = RuleDraft.of(Authority.EVENT, "Cooks in wool")
                .roles(Set.of(FireRole.COOKING))
                .within(Optional.of(1.5))
                .rule();
        FirePlan place = FirePlan.of(CAMPFIRE, List.of(cooks, KEEP));
        assertThat(place.rings())
                .extracting(FireRing::kind)
                .containsExactly(Kind.FLAMES, Kind.RING, Kind.SPARKS, Kind.RULE_KEEP, Kind.RULE_REACH);
        PictureRules.read(Shown.kept("fire-place", StandBackDrawing.svg(place)), "place")
                .readableOnAPhone()
                .wordsKeepTheirPlaces();
        assertThat(place.notes()).noneMatch(s -> s.contains("wearer"));
        assertThat(plan("wool 100", List.of(cooks), CAMPFIRE).rings())
                .extracting(FireRing::kind)
                .doesNotContain(Kind.RULE_REACH);
    }

    @Test
    void handsAtTheFlameAreToldOfAndNoDistanceIsMadeUp() {
        FirePlan cook = plan("wool 100", List.of(), FireFixtures.fire(FireRole.COOKING));
        assertThat(cook.rings()).extracting(FireRing::kind).doesNotContain(Kind.WEARER);
        assertThat(cook.notes()).anyMatch(s -> s.contains("Hands and sleeves"));
        FirePlan seated = plan("wool 100", List.of(), FireFixtures.fire(FireRole.SEATED));
        assertThat(StandBackDrawing.text(seated)).anyMatch(s -> s.startsWith("Nobody told how far away"));
        assertThat(StandBackDrawing.text(seated).get(0)).contains("untold size, counted as 100 kW");
    }

    @Test
    void sewnInPartsCanAskForMore() {
        Event event = FireFixtures.event(List.of(), CAMPFIRE, CAMPFIRE);
        FireJudgement wool = ADVICE.judge(FireFixtures.plain("wool 100", 300), event);
        FireJudgement melts = ADVICE.judge(FireFixtures.plain("polypropylene 100", 80), event);
        WornPart lining = new WornPart(Optional.empty(), FireFixtures.plain("polypropylene 100", 80));
        FireJudgement both = new FireJudgement(
                wool.gate(),
                wool.worst(),
                wool.spells(),
                wool.meltWarning(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new PartJudgement(lining, melts)));
        List<FirePlan> plans = FirePlan.all(both, List.of());
        assertThat(plans).hasSize(1);
        assertThat(plans.get(0).spells()).containsExactly("fireside 1", "fireside 2");
        assertThat(plans.get(0).cloth().orElseThrow().metres())
                .isEqualTo(melts.spells().get(0).hazard().standBackM())
                .isGreaterThan(wool.spells().get(0).hazard().standBackM());
    }

    @Test
    void whateverIsDrawnKeepsTheRulesAndNeverSaysThatAllIsWell() {
        Draw.often(1500, 77, draw -> {
            WornCloth cloth = draw.cloth();
            Event event = new RuleDraw(draw).event(draw.rules());
            List<FirePlan> plans = new ArrayList<>(FirePlan.all(ADVICE.judge(cloth, event), event.rules()));
            plans.add(FirePlan.of(draw.fire(), event.rules()));
            for (FirePlan plan : plans) {
                String text = String.join(" ", StandBackDrawing.text(plan));
                Draw.claim(!text.toLowerCase(Locale.ROOT).matches(".*\\b(safe|harmless|fireproof)\\b.*"), text);
                Draw.claim(text.contains("fire marshal"), text);
                checked(plan);
            }
        });
    }

    private static void checked(FirePlan plan) {
        try {
            PictureRules picture = PictureRules.read(StandBackDrawing.svg(plan), plan.toString())
                    .readableOnAPhone()
                    .wordsKeepTheirPlaces();
            for (double r : radii(picture)) {
                Draw.claim(r > 0 && r <= 138.01, plan, r);
            }
            for (FireRing ring : plan.rings()) {
                Draw.claim(StandBackDrawing.text(plan).contains(ring.sentence()), ring);
            }
        } catch (Exception unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @Test
    void hostileRulesAndNamesStayWords() throws Exception {
        SplittableRandom random = new SplittableRandom(5);
        for (String hostile : PictureRules.HOSTILE) {
            String words = hostile.substring(0, Math.min(hostile.length(), 90));
            SafetyRule rule = RuleDraft.of(Authority.EVENT, SvgText.of(words).isBlank() ? "x" : words)
                    .keepAtLeast(random.nextDouble(0.2, 900))
                    .rule();
            FirePlan plan = plan("wool 100", List.of(rule), CAMPFIRE);
            FirePlan named = new FirePlan(List.of(hostile), plan.exposure(), plan.cloth(), plan.rings());
            PictureRules.read(StandBackDrawing.svg(named), words).wordsKeepTheirPlaces();
        }
    }

    private static List<Double> radii(PictureRules picture) {
        return picture.all("circle").stream()
                .filter(c -> !((Element) c.getParentNode()).getTagName().equals("pattern"))
                .filter(c -> !c.getAttribute("fill").equals("#000"))
                .map(c -> Double.parseDouble(c.getAttribute("r")))
                .toList();
    }
}
