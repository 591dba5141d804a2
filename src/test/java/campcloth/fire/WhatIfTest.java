package campcloth.fire;

import static campcloth.fire.FireFixtures.event;
import static campcloth.fire.FireFixtures.fire;
import static campcloth.fire.FireFixtures.mostMeltable;
import static campcloth.fire.FireFixtures.plain;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.SafetyRule;
import campcloth.fire.FireJudgement.Gate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What would change a verdict, reasoned by hand from the classes of {@code HazardMatrix}, {@code Spread} and {@code Melt}. */
class WhatIfTest {

    private static final WhatIf WHAT_IF =
            new WhatIf(new FireAdvice(new FireRules(FireFixtures.FIBRES))::judge, FireFixtures.FIBRES);

    private static List<String> found(WornCloth cloth, Event event) {
        return WHAT_IF.of(new FireCase(cloth, event)).better().stream()
                .map(WhatIfTest::inShort)
                .toList();
    }

    private static String inShort(Better better) {
        return String.join(
                        " + ",
                        better.changes().stream()
                                .map(c -> c.kind() + " " + c.to())
                                .toList())
                + ": " + better.wouldBe() + " "
                + better.grade().map(Enum::name).orElse("-");
    }

    /**
     * Melt class 4 and spread 6 points: class 6, severe even with radiant heat. A seat means radiant heat however far it is, so
     * no distance helps; sparks in passing still come to level 2. A blend is only named with 20 % or less that melts, class 2,
     * and then in wool, for plant fibre would hold the melt; only at 5 % no melting is warned of, and only wool then has 3 points.
     */
    @Test
    void polyesterFleeceBesideTheFire() {
        WornCloth fleece = new WornCloth(
                FireFixtures.FIBRES.blend("polyester 100"),
                250,
                Surface.RAISED,
                Finish.NONE,
                Weave.FLEECE,
                Fit.LOOSE,
                Layer.OUTER);
        assertThat(found(fleece, event(List.of(), fire(FireRole.SEATED, 2))))
                .containsExactly(
                        "KEEP_DISTANCE 3.0 m: CAUTION HIGH",
                        "OTHER_BLEND 20 % polyester, rest wool: CAUTION RAISED",
                        "OTHER_BLEND 5 % polyester, rest wool: CLEAR RAISED");
    }

    /**
     * Fuel 2, mass 2, loose 1: 5 points, beyond the top, severe at the flame; one point less is level 2. From 136 g/m2 on mass
     * brings 1 point. Seated it stays class 5, level 2; passing, level 1. Standing further off while cooking changes nothing.
     */
    @Test
    void lightLooseLinenAtTheCookfire() {
        WornCloth linen =
                WornCloth.woven(FireFixtures.FIBRES.blend("flax 100"), 120, Surface.PLAIN, Fit.LOOSE, Layer.OUTER);
        Event cooking = event(List.of(), fire(FireRole.COOKING, 0.6));
        assertThat(found(linen, cooking))
                .containsExactly(
                        "CLOSE_FIT CLOSE: CAUTION HIGH",
                        "STAY_OUT_OF_REACH SEATED at 1.5 m: CAUTION HIGH",
                        "STAY_OUT_OF_REACH PASSING at 3.0 m: CLEAR RAISED",
                        "HEAVIER 140 g/m2: CAUTION HIGH",
                        "OTHER_BLEND 50 % flax, rest wool: CAUTION HIGH");
        assertThat(WHAT_IF.of(new FireCase(linen, cooking)).better().get(1).text())
                .isEqualTo(
                        "Leave the work at the flame to somebody else, and sit at least 1.5 m from the centre of the fire."
                                + " Standing further off at that work does not help: hands and sleeves come to the flame. For fire and"
                                + " rules it would then be \"with care\" instead of \"ruled out\", no better, because the grade at the fire in"
                                + " \"fireside 1\" is still high.");
    }

    /** The rule allows 33 %, but from 10 % on the cotton would hold the melt; at 5 % no melting is warned of with radiant heat. */
    @Test
    void polyCottonUnderARule() {
        SafetyRule rule = mostMeltable(33, Optional.of(3.0));
        WornCloth cloth = plain("polyester 65; cotton 35", 200);
        assertThat(found(cloth, event(List.of(rule), fire(FireRole.SEATED, 2))))
                .containsExactly(
                        "KEEP_DISTANCE 3.1 m: CAUTION HIGH",
                        "OTHER_BLEND 9 % polyester, rest wool/flax/cotton: CAUTION RAISED",
                        "OTHER_BLEND 5 % polyester, rest wool/flax/cotton: CLEAR RAISED");
        assertThat(found(cloth, event(List.of(rule), fire(FireRole.PASSING, 2))))
                .startsWith("KEEP_DISTANCE 3.1 m: CAUTION HIGH");
    }

    /** 5 % that melts on the skin is class 2: warned of at the flame and with radiant heat; worn outermost it is class 1. In passing class 2 is level 1. */
    @Test
    void woolWithElastaneOnTheSkin() {
        WornCloth jersey = WornCloth.woven(
                FireFixtures.FIBRES.blend("wool 95; elastane 5"), 180, Surface.PLAIN, Fit.CLOSE, Layer.SKIN);
        assertThat(found(jersey, event(List.of(), fire(FireRole.COOKING, 0.6))))
                .containsExactly(
                        "STAY_OUT_OF_REACH PASSING at 3.0 m: CLEAR RAISED",
                        "OTHER_BLEND 0 % elastane, rest wool/flax/cotton: CLEAR RAISED");
        assertThat(found(jersey, event(List.of(), fire(FireRole.SEATED, 2))))
                .startsWith("KEEP_DISTANCE 3.0 m: CLEAR RAISED", "OTHER_LAYER OUTER: CLEAR LOW");
    }

    /** The rule asks for 200 g/m2: of cloth given as 250 that may weigh 180, a piece must be weighed. */
    @Test
    void weighingAPieceMayBeAllThatIsNeeded() {
        SafetyRule heavy = new SafetyRule(
                SafetyRule.Authority.EVENT,
                "No thin cloth",
                Optional.empty(),
                Set.of(),
                Optional.of(200.0),
                false,
                Optional.empty());
        WornCloth cloth = new WornCloth(
                FireFixtures.FIBRES.blend("wool 100"),
                new ClothWeight(250, 180),
                Surface.PLAIN,
                Finish.NONE,
                Weave.TWILL,
                Fit.CLOSE,
                Layer.OUTER);
        List<Better> better =
                WHAT_IF.of(new FireCase(cloth, event(List.of(heavy)))).better();
        assertThat(better.stream().map(WhatIfTest::inShort)).containsExactly("HEAVIER 200 g/m2: CLEAR -");
        assertThat(better.get(0).text()).startsWith("Weigh it: a piece that weighs 200 g/m2 or more");
    }

    /** Neither half of it is enough: the rule wants plain cloth, and no more than 5 % that melts. */
    @Test
    void twoChangesTogetherWhereNoSingleOneHelps() {
        SafetyRule both = new SafetyRule(
                SafetyRule.Authority.EVENT,
                "Plain wool, linen or cotton",
                Optional.of(5.0),
                Set.of(),
                Optional.empty(),
                true,
                Optional.empty());
        WornCloth brushed = WornCloth.woven(
                FireFixtures.FIBRES.blend("cotton 60; acrylic 40"), 200, Surface.RAISED, Fit.CLOSE, Layer.OUTER);
        List<Better> better =
                WHAT_IF.of(new FireCase(brushed, event(List.of(both)))).better();
        assertThat(better.stream().map(WhatIfTest::inShort))
                .containsExactly("PLAIN_SURFACE PLAIN + OTHER_BLEND 5 % acrylic, rest wool/flax/cotton: CLEAR -");
        assertThat(better.get(0).text())
                .startsWith("Both together: Take the same fibres with a plain face")
                .endsWith(
                        "would then be \"nothing found against it\" instead of \"ruled out\", two steps. The cautions hold all the same.");
    }

    /** A rule that only a person can judge asks of every cloth. */
    @Test
    void whatOnlyAPersonCanJudgeNothingChanges() {
        SafetyRule person = new SafetyRule(
                SafetyRule.Authority.LOCAL_LAW,
                "As the marshal says",
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                false,
                Optional.empty());
        WhatIf.Answer answer = WHAT_IF.of(new FireCase(plain("wool 100", 400), event(List.of(person))));
        assertThat(answer.now().gate()).isEqualTo(Gate.CAUTION);
        assertThat(answer.nothingHelps()).isTrue();
        assertThat(answer.nothing()).endsWith("Ask whose rule it is.").doesNotContain("choose another cloth");
    }

    @Test
    void aClearVerdictNeedsNoChange() {
        WhatIf.Answer answer =
                WHAT_IF.of(new FireCase(plain("wool 100", 400), event(List.of(), fire(FireRole.SEATED, 3))));
        assertThat(answer.better()).isEmpty();
        assertThat(answer.nothingHelps()).isFalse();
    }

    /** 1 MW sends 1.6 kW/m2 to 4.5 m: nothing nearer is advised, though heavy close wool, class 0, is of no concern from 2 m on. */
    @Test
    void noDistanceNearerThanTheOneToKeepIsAdvised() {
        Event bonfire =
                event(List.of(), new campcloth.event.OpenFire(FireRole.SEATED, Optional.of(0.5), Optional.of(1000.0)));
        assertThat(found(plain("wool 100", 450), bonfire)).startsWith("KEEP_DISTANCE 4.5 m: CLEAR LOW");
    }

    /** Wax may soften at 55 degrees Celsius: beside 100 kW it keeps back 3.5 m, so who passes keeps them too. */
    @Test
    void aPlaceToPassIsNoNearerThanTheDistanceToKeep() {
        WornCloth waxed = new WornCloth(
                FireFixtures.FIBRES.blend("cotton 100"),
                400,
                Surface.PLAIN,
                Finish.WAXED,
                Weave.PLAIN,
                Fit.LOOSE,
                Layer.OUTER);
        assertThat(found(waxed, event(List.of(), fire(FireRole.SEATED, 2))))
                .containsExactly("KEEP_DISTANCE 3.6 m: CLEAR RAISED", "NO_FILM NONE: CLEAR RAISED");
    }

    /** Light plant fibre with half of it nylon is what research advises against: not named, nor a veil six times as heavy. */
    @Test
    void whatIsAdvisedAgainstIsNotNamed() {
        WornCloth cape =
                WornCloth.woven(FireFixtures.FIBRES.blend("polyamide 100"), 90, Surface.PLAIN, Fit.LOOSE, Layer.OUTER);
        assertThat(found(cape, event(List.of(), fire(FireRole.SEATED, 2))))
                .noneMatch(change -> change.contains("flax") && !change.startsWith("OTHER_BLEND 9 %"))
                .noneMatch(change -> change.matches("OTHER_BLEND [3-9]\\d %.*"))
                .isNotEmpty();
        WornCloth veil = new WornCloth(
                FireFixtures.FIBRES.blend("cotton 100"),
                60,
                Surface.PLAIN,
                Finish.NONE,
                Weave.OPEN_PLAIN,
                Fit.LOOSE,
                Layer.OUTER);
        assertThat(found(veil, event(List.of(), fire(FireRole.CARRYING, 0.6))))
                .isNotEmpty()
                .noneMatch(change -> change.startsWith("HEAVIER"));
    }

    /** No smaller share of what nobody named can be had: it is to be found out. */
    @Test
    void whatIsNotNamedIsToBeFoundOut() {
        List<Better> better = WHAT_IF.of(
                        new FireCase(plain("unknown 100", 200), event(List.of(), fire(FireRole.SEATED, 2))))
                .better();
        assertThat(better.stream().map(WhatIfTest::inShort))
                .filteredOn(change -> change.startsWith("OTHER_BLEND"))
                .singleElement()
                .asString()
                .startsWith("OTHER_BLEND 0 % unknown");
        assertThat(better.get(better.size() - 1).text()).startsWith("Find out what its unnamed fibre is");
    }
}
