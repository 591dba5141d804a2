package campcloth.pages.plan;

import campcloth.advice.Question;
import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.fire.FireJudgement;
import campcloth.fire.OutfitAdvice;
import campcloth.fire.WornCloth;
import org.springframework.stereotype.Component;

/** What fire and rules say of one cloth, spell by spell. */
@Component
class AtFire {

    private final OutfitAdvice advice;

    AtFire(OutfitAdvice advice) {
        this.advice = advice;
    }

    FireJudgement of(Question question, Cloth cloth) {
        return advice.ofGarment(
                WornCloth.of(Estimates.complete(cloth), question.wearAtFire()), question.outfit(), question.event());
    }
}
