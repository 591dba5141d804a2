package campcloth.comfort;

import campcloth.comfort.Reading.OutOfRange;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort.Heat;
import campcloth.comfort.SpellComfort.Warmth;
import campcloth.comfort.model.Body;
import campcloth.comfort.model.Motion;
import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.Worn;
import java.util.Optional;

/**
 * What {@link Comfort} tells at the best figures only, for those who ask it thousands of times: insulation and its margin, the
 * wettedness and the vapour resistance. The rest is not computed and says so; each value stands for its own interval.
 */
final class BestFigures {

    private static final Reading NOT_ASKED = new OutOfRange("not computed", "it was not asked for");

    private BestFigures() {}

    static SpellComfort in(Physics spell, Ensemble clothing) {
        SpellNeeds needs = spell.needs();
        return new SpellComfort(needs, warmth(needs, clothing), heat(spell, clothing), NOT_ASKED);
    }

    private static Warmth warmth(SpellNeeds needs, Ensemble clothing) {
        Surroundings around = needs.surroundings();
        Worn dry = clothing.worn(SpellNeeds.motion(around, around.lowMet()));
        double clo = WetWear.usual(needs, dry).clo();
        Reading resultant =
                Motion.outside(around.relativeMs()).<Reading>map(o -> o).orElseGet(() -> Reading.exact(clo));
        return new Warmth(
                resultant,
                Comfort.less(resultant, needs.neededClo()),
                Comfort.less(resultant, needs.minimalClo()),
                NOT_ASKED,
                Optional.empty());
    }

    private static Heat heat(Physics spell, Ensemble clothing) {
        Surroundings around = spell.needs().surroundings();
        Worn worn = clothing.worn(SpellNeeds.motion(around, around.highMet()));
        double ceiling = Comfort.comfortableWettedness(around.highMet());
        Value resistance = Reading.exact(worn.vapourResistanceM2KpaW() * 1000);
        Optional<OutOfRange> outside = TwoNode.outside(around.air(), around.highMet(), worn);
        if (outside.isPresent()) {
            OutOfRange none = outside.get();
            return new Heat(none, none, ceiling, none, none, none, none, resistance);
        }
        TwoNode model = spell.body(worn);
        Body body = model.after(Hour.MINUTES);
        return new Heat(
                Reading.exact(body.wettedness()),
                Reading.exact(body.wettednessAsked()),
                ceiling,
                Reading.exact(model.wettest()),
                Reading.exact(body.skinC()),
                Reading.exact(body.coreC()),
                NOT_ASKED,
                resistance);
    }
}
