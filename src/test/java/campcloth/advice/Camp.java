package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.ShippedCatalogue;
import campcloth.cloth.Wear;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Spells, rules and questions of the Wendlow river camp, and the catalogue's cloths judged there. */
final class Camp {

    static final ShippedCatalogue CATALOGUE = ShippedCatalogue.get();

    /** A knee-length tunic on the skin, with nothing over it. */
    static final Wear TUNIC = new Wear(true, Layer.OUTER, Fit.LOOSE, false, 65, 1.7);

    static final FireAdvice FIRE = new FireAdvice(new FireRules(CATALOGUE.fibres()));

    static final Adviser ADVISER = new Adviser(FIRE);

    /** The whole catalogue. */
    static final List<Candidate> ALL = CATALOGUE.cloths().entrySet().stream()
            .map(e -> new Candidate(e.getKey(), e.getValue()))
            .toList();

    static final Cloth WOOL = Estimates.complete(CATALOGUE.cloths().values().stream()
            .filter(c -> c.blend().words().contains("wool"))
            .findFirst()
            .orElseThrow());

    static final Spell SUMMER_NOON = new Spell("noon", 5, 27, 50, 1.5, Sun.FULL, Activity.WALKING, Optional.empty());

    static final Spell WINDY_WINTER_DAY =
            new Spell("market", 5, 2, 80, 6, Sun.NONE, Activity.STANDING, Optional.empty());

    static final SafetyRule NO_SYNTHETICS_WITHIN_3_M =
            rule("No synthetic fibres within three metres of open fire", Optional.of(0.0), Optional.of(3.0));

    private Camp() {}

    static Spell fireside(FireRole role, double distanceM) {
        return new Spell(
                "fireside",
                3,
                12,
                75,
                1,
                Sun.NONE,
                Activity.SEATED,
                Optional.of(new OpenFire(role, Optional.of(distanceM), Optional.empty())));
    }

    static SafetyRule rule(String words, Optional<Double> maxMeltablePercent, Optional<Double> withinM) {
        return new SafetyRule(Authority.EVENT, words, maxMeltablePercent, Set.of(), Optional.empty(), false, withinM);
    }

    static Event event(List<SafetyRule> rules, Spell... spells) {
        return new Event("Wendlow river camp", Season.SUMMER, List.of(spells), rules);
    }

    /** The whole catalogue ranked. */
    static List<Judged> ranked(Event event) {
        return ranked(event, ALL);
    }

    static List<Judged> ranked(Event event, List<Candidate> candidates) {
        return ADVISER.rank(new Question(event, TUNIC, candidates)).judged();
    }

    static Judged judged(Cloth cloth, Event event) {
        return ADVISER.rank(new Question(event, TUNIC, List.of(new Candidate("it", cloth))))
                .judged()
                .get(0);
    }

    static Assessment assessment(Judged judged, String criterion) {
        return judged.criteria().stream()
                .filter(a -> a.criterion().equals(criterion))
                .findFirst()
                .orElseThrow();
    }
}
