package campcloth.advice;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;
import campcloth.fire.FireJudgement;
import campcloth.fire.FireWarning;
import campcloth.fire.PartJudgement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What to heed about a cloth, most urgent first. What no choice of cloth changes is not told of each cloth but once, by
 * {@link EventCautions}.
 */
final class Warnings {

    private Warnings() {}

    static List<Warning> of(Facts facts, List<Warning> ofTheRest) {
        List<Warning> warnings = new ArrayList<>(ofTheRest);
        for (FireWarning warning : facts.fire().warnings()) {
            warnings.add(Warning.of(warning));
        }
        if (!suitsDesign(facts)) {
            warnings.add(new Warning(
                    "STRETCH",
                    Warning.Severity.CAUTION,
                    "It stretches; this design is drawn for cloth that does not. Choose woven cloth without stretch."));
        }
        for (int i = 0; i < facts.spells().size(); i++) {
            ofSpell(facts, i, warnings);
        }
        warnings.sort(Comparator.comparing(Warning::severity).reversed());
        return List.copyOf(warnings);
    }

    /** That something worn besides is ruled out: then no cloth is suitable, for none makes up for it. */
    static List<Warning> ofTheRest(List<PartJudgement> wornBesides) {
        String ruledOut = wornBesides.stream()
                .filter(part -> part.judgement().gate() == FireJudgement.Gate.RULED_OUT)
                .map(part -> part.part().name())
                .distinct()
                .collect(Collectors.joining(", "));
        return ruledOut.isEmpty()
                ? List.of()
                : List.of(new Warning(
                        "OUTFIT",
                        Warning.Severity.CAUTION,
                        "Ruled out of what is worn with it: " + ruledOut
                                + ". No cloth of the garment makes up for that. Change it first; see the outfit."));
    }

    /** Whether the design can be made of it at all. */
    static boolean suitsDesign(Facts facts) {
        return !facts.cloth().stretch() || facts.wear().stretchAllowed();
    }

    private static void ofSpell(Facts facts, int number, List<Warning> warnings) {
        SpellComfort spell = facts.spells().get(number);
        SpellComfort airy = facts.bounds().airy().get(number);
        SpellComfort close = facts.bounds().close().get(number);
        if (isHotterThanNeedBe(spell, airy)) {
            warnings.add(new Warning("HEAT_STRAIN", Warning.Severity.CAUTION, heat(spell)));
        }
        if (Cooling.tooSoon(spell)) {
            boolean needBe = !isColderThanNeedBe(spell, close);
            warnings.add(new Warning("COLD", needBe ? Warning.Severity.NOTE : Warning.Severity.CAUTION, cold(spell)));
        }
        EventCautions.notComputed(spell)
                .ifPresent(text -> warnings.add(new Warning("OUT_OF_MODEL", Warning.Severity.CAUTION, text)));
    }

    /** Whether any of the spells asks for caution with a cloth. */
    static boolean asksForCaution(List<SpellComfort> spells, Bounds bounds) {
        for (int i = 0; i < spells.size(); i++) {
            if (isHotterThanNeedBe(spells.get(i), bounds.airy().get(i))
                    || isColderThanNeedBe(spells.get(i), bounds.close().get(i))
                    || EventCautions.notComputed(spells.get(i)).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** Whether the body heats up in it, but not in the airiest cloth. */
    static boolean isHotterThanNeedBe(SpellComfort spell, SpellComfort airy) {
        return Sweat.clearlyDripsOff(spell) && !Sweat.dripsOff(airy);
    }

    /** Whether the body cools down in it too soon, but not in the closest cloth. */
    static boolean isColderThanNeedBe(SpellComfort spell, SpellComfort close) {
        return Cooling.tooSoon(spell) && !Cooling.tooSoon(close);
    }

    private static String heat(SpellComfort spell) {
        return "In \"" + spell.needs().spell().name()
                + "\" the body cannot get rid of its heat in this cloth. Take a more"
                + " open one, or rest in the shade, drink, take layers off.";
    }

    private static String cold(SpellComfort spell) {
        return "In \"" + spell.needs().spell().name() + "\" ("
                + number(spell.needs().spell().hours())
                + " h) this clothing alone lasts about "
                + fixed(
                        spell.warmth()
                                .hoursUntilCooling()
                                .inRange()
                                .map(Value::value)
                                .orElse(0.0),
                        1)
                + " h before the wearer cools (ISO 11079). Add a layer, move, or warm up in between.";
    }
}
