package campcloth.comfort;

import static campcloth.comfort.SpellNeeds.WM2_PER_MET;

import campcloth.comfort.Before.Pair;
import campcloth.comfort.Moment.Dressed;
import campcloth.comfort.Moment.Felt;
import campcloth.comfort.Reading.OutOfRange;
import campcloth.comfort.model.ColdCriterion;
import campcloth.comfort.model.Motion;
import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.Worn;
import campcloth.event.Activity;
import java.util.List;
import java.util.Optional;

/** The way through one stretch of an event in certain clothing. */
final class Walk {

    /** Both models of the body, where they hold. */
    private record Models(TwoNode little, TwoNode much) {}

    private final Dressed dressed;
    private final Optional<Models> models;
    private Before state;

    private Walk(Dressed dressed, Optional<Models> models, Before state) {
        this.dressed = dressed;
        this.models = models;
        this.state = state;
    }

    static Walk of(Stretch stretch, Ensemble clothing, Before before) {
        Surroundings around = stretch.needs().surroundings();
        Worn cold = WetWear.usual(stretch.needs(), clothing.worn(SpellNeeds.motion(around, around.lowMet())));
        Worn warm = clothing.worn(SpellNeeds.motion(around, around.highMet()));
        Dressed dressed = dressed(stretch, cold, warm);
        if (dressed.notComputed().isPresent()) {
            return new Walk(dressed, Optional.empty(), unfollowed(dressed, before));
        }
        Models models = new Models(
                new TwoNode(around.air(), around.lowMet(), cold, around.seated()),
                new TwoNode(around.air(), around.highMet(), warm, around.seated()));
        return new Walk(dressed, Optional.of(models), before.start(around, models.little, models.much));
    }

    private static Dressed dressed(Stretch stretch, Worn cold, Worn warm) {
        SpellNeeds needs = stretch.needs();
        Reading given = Motion.outside(needs.surroundings().relativeMs())
                .<Reading>map(o -> o)
                .orElseGet(() -> Reading.exact(cold.clo()));
        return new Dressed(
                stretch,
                given,
                Comfort.less(given, needs.neededClo()),
                Comfort.less(given, needs.minimalClo()),
                notComputed(needs, cold, warm));
    }

    private static Optional<String> notComputed(SpellNeeds needs, Worn cold, Worn warm) {
        if (needs.spell().activity() == Activity.SLEEPING) {
            return Optional.of("asleep: bedding decides, not the garment");
        }
        Surroundings around = needs.surroundings();
        return TwoNode.outside(around.air(), around.lowMet(), cold)
                .or(() -> TwoNode.outside(around.air(), around.highMet(), warm))
                .map(OutOfRange::because);
    }

    private static Before unfollowed(Dressed dressed, Before before) {
        boolean chilled =
                dressed.minimalMarginClo().inRange().filter(m -> m.value() < 0).isPresent();
        if (!chilled) {
            return new Before.Rested();
        }
        Surroundings around = dressed.stretch().needs().surroundings();
        return new Before.Chilled(ColdCriterion.MINIMAL.skinC(around.lowMet() * WM2_PER_MET), before.waterGM2());
    }

    /** How the wearers come out of it. */
    Before left() {
        return state;
    }

    /** Adds the stretch's minutes. */
    void through(List<Moment> moments) {
        Stretch stretch = dressed.stretch();
        boolean still = false;
        Optional<Felt> felt = Optional.empty();
        for (int minute = stretch.fromMinute() + 1; minute <= stretch.toMinute(); minute++) {
            if (!still && models.isPresent() && state instanceof Pair pair) {
                Pair next = pair.minuteLater(models.get().little, models.get().much);
                still = next.stands(pair);
                state = next;
                felt = Optional.of(felt(next));
            }
            moments.add(new Moment(minute, dressed, felt));
        }
    }

    private static Felt felt(Pair now) {
        return new Felt(
                now.little().body().skinC(),
                ColdCriterion.MINIMAL.skinC(now.lowMet() * WM2_PER_MET),
                now.little().body().coreC(),
                now.much().body().wettedness(),
                now.much().wetness(),
                Comfort.comfortableWettedness(now.highMet()),
                now.much().body().coreC(),
                Math.max(now.little().waterGM2(), now.much().waterGM2()));
    }
}
