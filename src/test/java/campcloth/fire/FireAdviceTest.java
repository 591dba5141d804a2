package campcloth.fire;

import static campcloth.fire.FireFixtures.event;
import static campcloth.fire.FireFixtures.fire;
import static campcloth.fire.FireFixtures.forbidden;
import static campcloth.fire.FireFixtures.mostMeltable;
import static campcloth.fire.FireFixtures.plain;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Wear;
import campcloth.cloth.Weave;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.FireWarning.Code;
import campcloth.fire.FireWarning.Severity;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FireAdviceTest {

    private static final FireAdvice ADVICE = new FireAdvice(new FireRules(FireFixtures.FIBRES));

    @Test
    void polyesterAtTheCookfireIsRuledOutAndHeavyWoolIsNot() {
        Event cooking = event(List.of(), fire(FireRole.COOKING, 0.6));
        assertThat(ADVICE.judge(plain("polyester 100", 200), cooking).gate()).isEqualTo(Gate.RULED_OUT);
        assertThat(ADVICE.judge(plain("wool 100", 450), cooking).gate()).isEqualTo(Gate.CLEAR);
    }

    @Test
    void polyCottonBesideTheFireIsWarnedOfWithTheReason() {
        FireJudgement judgement =
                ADVICE.judge(plain("polyester 65; cotton 35", 200), event(List.of(), fire(FireRole.SEATED, 2)));
        FireWarning melt = judgement.warnings().stream()
                .filter(w -> w.code() == Code.MELT)
                .findFirst()
                .orElseThrow();
        assertThat(melt.text()).contains("65 %", "Charred cotton holds the molten polyester", "2 m from its centre");
        assertThat(melt.severity()).isEqualTo(Severity.CAUTION);
    }

    @Test
    void worstSpellDecides() {
        FireJudgement judgement = ADVICE.judge(
                plain("cotton 100", 200),
                event(List.of(), fire(FireRole.PASSING, 10), fire(FireRole.TENDING), fire(FireRole.SEATED, 3)));
        assertThat(judgement.worst().orElseThrow().spell()).isEqualTo("fireside 2");
        assertThat(judgement.spells()).hasSize(3);
        assertThat(judgement.gate()).isEqualTo(Gate.CAUTION);
    }

    @Test
    void withoutAFireOnlyRulesThatHoldEverywhereForbid() {
        WornCloth cloth = plain("polyester 100", 200);
        assertThat(ADVICE.judge(cloth, event(List.of())).gate()).isEqualTo(Gate.CLEAR);
        assertThat(ADVICE.judge(cloth, event(List.of(mostMeltable(0, Optional.of(3.0)))))
                        .gate())
                .isEqualTo(Gate.CLEAR);
        assertThat(ADVICE.judge(cloth, event(List.of(forbidden("polyester")))).gate())
                .isEqualTo(Gate.RULED_OUT);
        assertThat(ADVICE.judge(cloth, event(List.of())).hazard()).isZero();
    }

    @Test
    void missingRuleIsToldAndIsNoPermission() {
        FireJudgement judgement = ADVICE.judge(plain("wool 100", 450), event(List.of(forbidden("polyester"))));
        assertThat(judgement.cautions())
                .contains(
                        "Rules of event, local law: none on file, ask the event's organiser or fire marshal; the local authority or"
                                + " the fire service.");
        assertThat(judgement.warnings()).extracting(FireWarning::text).noneMatch(text -> text.contains("on file"));
    }

    @Test
    void traceOfElastaneNamesTheToleranceOfLabels() {
        assertThat(FireWarnings.of(plain("cotton 95; elastane 5", 180), FireFixtures.at(FireRole.SEATED, 2)))
                .extracting(FireWarning::text)
                .contains(FireCautions.LABEL_TOLERANCE);
    }

    @Test
    void exemptionFromATestOfSpreadBringsNoExemptionFromTheMeltWarning() {
        // 16 CFR 1610.1(d) exempts cloth wholly of polyester of any weight.
        assertThat(FireGrading.grade(plain("polyester 100", 300), FireFixtures.at(FireRole.SEATED, 2))
                        .meltWarning())
                .isEqualTo(MeltWarning.WARN);
    }

    @Test
    void clothOfAnUncertainWeightIsGradedAtItsLowEndAndOnTheSkinWhereItTouchesIt() {
        Cloth cloth = new Cloth(
                "shirting",
                FireFixtures.FIBRES.blend("cotton 100"),
                Weave.PLAIN,
                Surface.PLAIN,
                Finish.NONE,
                false,
                false,
                Map.of(Property.WEIGHT_GSM, new Figure(140, 120, 160, Basis.TYPICAL, "test")),
                "");
        Wear wear = new Wear(true, Layer.OUTER, Fit.LOOSE, false, 60, 2);
        WornCloth worn = WornCloth.of(cloth, wear);
        Event camp = event(List.of(), fire(FireRole.SEATED, 2));
        assertThat(ADVICE.judge(cloth, wear, camp)).isEqualTo(ADVICE.judge(worn, camp));
        assertThat(worn.weightGsm()).isEqualTo(120);
        assertThat(worn.layer()).isEqualTo(Layer.SKIN);
    }
}
