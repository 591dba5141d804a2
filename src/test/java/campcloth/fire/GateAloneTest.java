package campcloth.fire;

import static campcloth.fire.Draw.claim;

import campcloth.cloth.Outfit;
import campcloth.event.Event;
import campcloth.fire.FireJudgement.Gate;
import org.junit.jupiter.api.Test;

/** The search for a better verdict asks only for the gate: it must never hear another than the full judgement gives. */
class GateAloneTest {

    private static final FireAdvice ADVICE = new FireAdvice(new FireRules(FireFixtures.FIBRES));
    private static final OutfitAdvice OUTFITS = new OutfitAdvice(ADVICE);
    private static final int CASES = 5000;

    @Test
    void theGateAloneIsThatOfTheJudgement() {
        Draw.often(CASES, 61_000_000, draw -> {
            WornCloth cloth = draw.cloth();
            Outfit outfit = Outfits.outfit(draw);
            RuleDraw rules = new RuleDraw(draw);
            Event event = rules.event(rules.rules());
            Gate alone = ADVICE.judge(cloth, event).gate();
            Gate whole = OUTFITS.ofGarment(cloth, outfit, event).gate();
            claim(OUTFITS.gate(cloth, outfit, event) == whole, whole, cloth, outfit, event);
            for (Gate target : Gate.values()) {
                claim(
                        ADVICE.reaches(cloth, event, target) == (alone.compareTo(target) <= 0),
                        target,
                        alone,
                        cloth,
                        event);
                claim(
                        OUTFITS.reaches(cloth, outfit, event, target) == (whole.compareTo(target) <= 0),
                        target,
                        whole,
                        cloth,
                        outfit,
                        event);
            }
        });
    }
}
