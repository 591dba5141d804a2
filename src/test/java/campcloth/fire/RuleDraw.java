package campcloth.fire;

import campcloth.event.Event;
import campcloth.event.EventDates;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Spell;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Draws rules with any conditions, events under them, and rules made stricter. */
final class RuleDraw {

    private static final List<String> FIBRES =
            List.of("cotton", "flax", "wool", "silk", "polyester", "polyamide", "aramid", "moonweed");
    private static final LocalDate DAY = LocalDate.of(2027, 7, 16);

    private final Draw draw;

    RuleDraw(Draw draw) {
        this.draw = draw;
    }

    SafetyRule rule() {
        RuleDraft rule = toBeJudged(toBeChecked(reaching()));
        return draw.coin() ? rule.rule() : dated(rule).rule();
    }

    /** A rule that asks for something by name. */
    SafetyRule ruleWithConditions() {
        SafetyRule rule = rule();
        while (rule.conditions().isEmpty()) {
            rule = rule();
        }
        return rule;
    }

    /** A rule of which nothing can be checked here. */
    SafetyRule ruleForPersons() {
        RuleDraft rule = toBeJudged(reaching());
        return (draw.coin() ? rule : dated(rule)).rule();
    }

    List<SafetyRule> rules() {
        List<SafetyRule> rules = new ArrayList<>();
        while (rules.size() < 4 && draw.coin()) {
            rules.add(rule());
        }
        return rules;
    }

    List<OpenFire> fires() {
        List<OpenFire> fires = new ArrayList<>();
        while (fires.size() < 3 && draw.coin()) {
            fires.add(new OpenFire(draw.roleAtFire(), draw.perhapsDistanceM(), draw.perhapsFireKw()));
        }
        return fires;
    }

    Optional<EventDates> dates() {
        LocalDate first = day();
        return draw.coin()
                ? Optional.empty()
                : Optional.of(new EventDates(first, first.plusDays((long) draw.between(0, 5))));
    }

    Event event(List<SafetyRule> rules) {
        List<Spell> spells = new ArrayList<>(List.of(FireFixtures.spell("noon", Optional.empty())));
        fires().forEach(fire -> spells.add(FireFixtures.spell("fireside", Optional.of(fire))));
        return new Event("Wendlow river camp", Season.SUMMER, spells, rules, false, dates(), Optional.empty());
    }

    /** The same rule with one thing in it made stricter. */
    SafetyRule stricter(SafetyRule rule) {
        RuleDraft draft = RuleDraft.of(rule);
        RuleDraft made = switch ((int) draw.between(0, 11)) {
            case 0 -> draft.mostMeltable(rule.conditions().maxMeltablePercent().orElse(100.0) * part());
            case 1 -> draft.forbidding(with(rule.conditions().forbiddenFibres()));
            case 2 -> draft.allowingOnly(fewer(rule.conditions().allowedFibres()));
            case 3 ->
                draft.leastWeight(
                        Math.min(2000, rule.conditions().minWeightGsm().orElse(0.0) + draw.between(0, 300)));
            case 4 -> draft.plainSurface();
            case 5 -> draft.closeFit();
            case 6 -> draft.keepAtLeast(rule.conditions().keepAtLeastM().orElse(0.0) + draw.between(0.1, 5));
            case 7 -> draft.treatment("a treatment that lasts");
            case 8 -> draft.certificate("a report");
            case 9 ->
                draft.within(rule.reach().withinM().filter(m -> draw.coin()).map(m -> m + draw.between(0, 5)));
            default -> draft.roles(more(rule.reach().roles()));
        };
        return made.rule();
    }

    private RuleDraft reaching() {
        RuleDraft rule = RuleDraft.of(draw.one(List.of(Authority.values())), "rule " + (int) draw.between(0, 50));
        if (draw.coin()) {
            rule = rule.within(Optional.of(draw.distanceM()));
        }
        return seldom() ? rule.roles(new TreeSet<>(List.of(draw.roleAtFire(), FireRole.CARRYING))) : rule;
    }

    private RuleDraft toBeChecked(RuleDraft drawn) {
        RuleDraft rule = drawn;
        if (draw.coin()) {
            rule = rule.mostMeltable(draw.coin() ? 0 : draw.percent());
        }
        if (seldom()) {
            rule = rule.forbidding(with(Set.of()));
        }
        if (seldom()) {
            rule = rule.allowingOnly(with(with(with(Set.of()))));
        }
        if (seldom()) {
            rule = rule.leastWeight(draw.weightGsm());
        }
        if (seldom()) {
            rule = rule.plainSurface();
        }
        if (seldom()) {
            rule = rule.closeFit();
        }
        return seldom() ? rule.keepAtLeast(draw.distanceM()) : rule;
    }

    private RuleDraft toBeJudged(RuleDraft drawn) {
        RuleDraft rule = drawn;
        if (seldom()) {
            rule = rule.treatment("a treatment that lasts");
        }
        if (seldom()) {
            rule = rule.certificate("a report under a named standard");
        }
        return seldom() ? rule.askAbout("whether the marshal has seen it") : rule;
    }

    private RuleDraft dated(RuleDraft rule) {
        LocalDate first = day();
        return rule.from("camp rules", draw.coin() ? "1" : "2", "2027-01-0" + (draw.coin() ? 1 : 2))
                .term(
                        Optional.of(first).filter(day -> draw.coin()),
                        Optional.of(first.plusDays(3)).filter(day -> draw.coin()));
    }

    private LocalDate day() {
        return DAY.plusDays((long) draw.between(-4, 4));
    }

    private boolean seldom() {
        return draw.between(0, 4) < 1;
    }

    private double part() {
        return draw.between(0, 1);
    }

    private Set<String> with(Set<String> fibres) {
        Set<String> more = new TreeSet<>(fibres);
        more.add(draw.one(FIBRES));
        return more;
    }

    private Set<String> fewer(Set<String> fibres) {
        Set<String> fewer = new TreeSet<>(fibres);
        if (fewer.size() > 1) {
            fewer.remove(draw.one(List.copyOf(fewer)));
        }
        return fewer.isEmpty() ? with(fewer) : fewer;
    }

    private Set<FireRole> more(Set<FireRole> roles) {
        if (roles.isEmpty() || draw.coin()) {
            return Set.of();
        }
        Set<FireRole> more = new TreeSet<>(roles);
        more.add(draw.roleAtFire());
        return more;
    }
}
