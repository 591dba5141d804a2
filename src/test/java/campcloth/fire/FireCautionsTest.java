package campcloth.fire;

import static campcloth.fire.Draw.always;
import static campcloth.fire.Draw.claim;
import static campcloth.fire.FireFixtures.event;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.OpenFire;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every verdict on fire carries, and what none may say. */
class FireCautionsTest {

    private static final FireAdvice ADVICE = new FireAdvice(new FireRules(FireFixtures.FIBRES));

    private static final Pattern PROMISE =
            Pattern.compile("\\b(safe|safely|safety|fireproof|compliant|certified)\\b", Pattern.CASE_INSENSITIVE);

    @Test
    void everyJudgementDefersToRulesAndEveryOneWithAFireTellsFirstAid() {
        always(3030, draw -> {
            OpenFire fire = draw.fire();
            FireJudgement judgement = ADVICE.judge(draw.cloth(), event(draw.rules(), fire));
            List<String> cautions = judgement.cautions();
            claim(cautions.containsAll(List.of(FireCautions.RULES_WIN, FireCautions.FIRE_BAN)), cautions);
            claim(cautions.stream().anyMatch(c -> c.contains("Any clothing can burn")), cautions);
            boolean reached =
                    judgement.spells().stream().anyMatch(s -> s.hazard().reach() != ExposureClass.NONE);
            claim(cautions.contains(FireCautions.FIRST_AID) == reached, fire, cautions);
            claim(cautions.contains(FireCautions.MEDICAL_HELP) == reached, fire, cautions);
            claim(cautions.contains(FireCautions.AT_THE_FIRE) == reached, fire, cautions);
            saysNothingThatPromises(judgement);
        });
    }

    private static void saysNothingThatPromises(FireJudgement judgement) {
        List<String> said = new ArrayList<>(judgement.cautions());
        judgement.warnings().forEach(w -> said.add(w.text()));
        judgement.rules().forEach(r -> said.add(r.because()));
        judgement.spells().forEach(s -> s.hazard().reasons().forEach(r -> said.add(r.sentence())));
        said.forEach(s -> claim(!PROMISE.matcher(s).find() && !s.contains("Infinity"), s));
    }

    @Test
    void firstAidSaysWhatTheGuidelinesSay() {
        assertThat(FireCautions.FIRST_AID)
                .contains("stop, drop, cover and roll", "at least 20 minutes", "up to 3 hours", "jewellery", "warm")
                .contains("never pull off anything melted or stuck", "No ice", "film", "local first-aid authority");
        assertThat(FireCautions.MEDICAL_HELP)
                .contains("emergency number", "child", "face, hands, feet or groin", "3 cm");
    }

    @ParameterizedTest
    @EnumSource
    void outsideTheBoundaryOneIsToldWhomToAskAndNothingOfTheCloth(Boundary boundary) {
        assertThat(boundary.ask()).hasSizeGreaterThan(1).anyMatch(whom -> whom.contains("fire marshal"));
        assertThat(boundary.because()).contains("is not graded");
        assertThat(boundary.cautions())
                .contains(FireCautions.RULES_WIN, FireCautions.FIRST_AID, FireCautions.MEDICAL_HELP);
        List<String> said = new ArrayList<>(boundary.ask());
        said.add(boundary.because());
        said.addAll(boundary.cautions());
        assertThat(said).noneMatch(sentence -> PROMISE.matcher(sentence).find());
    }
}
