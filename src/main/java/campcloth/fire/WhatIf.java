package campcloth.fire;

import campcloth.event.Event;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What would change the verdict that fire and rules give a cloth. Found by search: the case is changed and judged again by the
 * very functions that judged it first, rules and all; no rule is ever left out or read otherwise.
 *
 * <p>What better verdict it comes to is not enough to be told: {@link Advisable}. Of each kind of change the least is looked for that betters the verdict, and the least that clears it, by halving the steps
 * of {@link Dials}. Halving presumes that more of a change is never worse. Where that should not hold, what is told has still been
 * judged itself, and one step less has been judged and falls short or may not be advised; only a lesser change may be overlooked. Two changes together
 * are looked for only where no single one betters the verdict.
 */
public final class WhatIf {

    private static final String NOTHING = "Nothing we can compute changes this: choose another cloth.";

    private static final String ASK =
            "Nothing we can compute changes this: what is left only a person can judge. Ask whose rule it is.";

    private static final int MOST = 6;

    /** How fire and rules judge a cloth at an event. */
    public interface Judge {
        FireJudgement judge(WornCloth cloth, Event event);

        /** Whether that comes to a gate or a milder one; who can tell it at less cost does. */
        default boolean reaches(WornCloth cloth, Event event, Gate target) {
            return judge(cloth, event).gate().compareTo(target) <= 0;
        }
    }

    private final Judge judge;
    private final Dials dials;

    public WhatIf(Judge judge, Fibres fibres) {
        this.judge = judge;
        this.dials = new Dials(fibres);
    }

    /**
     * What was found.
     *
     * @param now the judgement as it stands
     * @param better what would better it, the least effort first; empty where it is clear already and where nothing betters it
     */
    public record Answer(FireJudgement now, List<Better> better) {

        public Answer {
            better = List.copyOf(better);
        }

        /** Whether there is something to better and nothing that does. */
        public boolean nothingHelps() {
            return now.gate() != Gate.CLEAR && better.isEmpty();
        }

        /** What to say where nothing was found: where only rules that a person must judge are left, another cloth is no help. */
        public String nothing() {
            boolean ofTheCloth = now.meltWarning().compareTo(MeltWarning.WARN) >= 0
                    || Better.gradeOf(now)
                            .filter(grade -> grade.compareTo(FireGrade.HIGH) >= 0)
                            .isPresent();
            boolean forbidden = now.rules().stream().anyMatch(rule -> rule.outcome() == Outcome.FORBIDDEN);
            return ofTheCloth || forbidden ? NOTHING : ASK;
        }
    }

    /** At most 6 of what would better the verdict; of what clears it at least one, where there is any. */
    public Answer of(FireCase now) {
        FireJudgement judgement = judge(now, List.of());
        return new Answer(judgement, limited(all(now, judgement.gate())));
    }

    private static List<Better> limited(List<Better> all) {
        List<Better> first = new ArrayList<>(all.subList(0, Math.min(MOST, all.size())));
        Predicate<Better> clears = better -> better.wouldBe() == Gate.CLEAR;
        if (first.stream().noneMatch(clears)) {
            all.stream().filter(clears).findFirst().ifPresent(clear -> first.set(first.size() - 1, clear));
        }
        return first;
    }

    /** The same without a limit to their number. */
    List<Better> all(FireCase now, Gate from) {
        if (from == Gate.CLEAR) {
            return List.of();
        }
        List<List<Change>> dialsOfThis = dials.of(now);
        List<Better> found = new ArrayList<>();
        for (List<Change> dial : dialsOfThis) {
            if (!isExchanged(found, dial)) {
                addDistinct(found, from, target -> single(now, from, dial, target));
            }
        }
        if (found.isEmpty()) {
            for (int i = 0; i < dialsOfThis.size(); i++) {
                for (List<Change> other : dialsOfThis.subList(i + 1, dialsOfThis.size())) {
                    List<Change> one = dialsOfThis.get(i);
                    if (one.get(0).kind() != other.get(0).kind()) {
                        addDistinct(found, from, target -> pair(now, from, one, other, target));
                    }
                }
            }
        }
        return leastOfEachKind(found);
    }

    /** Whether another fibre in the place of the same ones was found to do already. */
    private static boolean isExchanged(List<Better> found, List<Change> dial) {
        return dial.get(0) instanceof OtherBlend blend
                && found.stream()
                        .flatMap(better -> better.changes().stream())
                        .anyMatch(c ->
                                c instanceof OtherBlend other && other.fibres().equals(blend.fibres()));
    }

    /** What just betters the verdict, and what clears it where that is more. */
    private static void addDistinct(List<Better> found, Gate from, Function<Gate, Optional<Better>> search) {
        Optional<Better> better = search.apply(Gate.values()[from.ordinal() - 1]);
        better.ifPresent(found::add);
        if (better.filter(b -> b.wouldBe() != Gate.CLEAR).isPresent()) {
            search.apply(Gate.CLEAR).ifPresent(found::add);
        }
    }

    private Optional<Better> single(FireCase now, Gate from, List<Change> dial, Gate target) {
        return least(dial, change -> reaches(now, List.of(change), target))
                .map(change -> better(now, from, List.of(change)));
    }

    /** The least of the other with the greatest of the one, then the least of the one that still does with that. */
    private Optional<Better> pair(FireCase now, Gate from, List<Change> one, List<Change> other, Gate target) {
        Change greatest = one.get(one.size() - 1);
        return least(other, change -> reaches(now, inOrder(greatest, change), target))
                .flatMap(second -> least(one, first -> reaches(now, inOrder(first, second), target))
                        .map(first -> better(now, from, inOrder(first, second))));
    }

    /** The place at the fire before the distance: who works at the flame cannot keep one. */
    private static List<Change> inOrder(Change one, Change other) {
        return one.kind() == Change.Kind.KEEP_DISTANCE ? List.of(other, one) : List.of(one, other);
    }

    /** The first step from which on the condition holds; the last step tells whether it is worth looking. */
    private static Optional<Change> least(List<Change> dial, Predicate<Change> holds) {
        int fails = -1;
        int does = dial.size() - 1;
        if (!holds.test(dial.get(does))) {
            return Optional.empty();
        }
        while (does - fails > 1) {
            int middle = (fails + does) / 2;
            if (holds.test(dial.get(middle))) {
                does = middle;
            } else {
                fails = middle;
            }
        }
        return Optional.of(dial.get(does));
    }

    private boolean reaches(FireCase now, List<Change> changes, Gate target) {
        FireCase then = changed(now, changes);
        return judge.reaches(then.cloth(), then.event(), target)
                && Advisable.are(changes, now, then, judge.judge(then.cloth(), then.event()));
    }

    private FireJudgement judge(FireCase now, List<Change> changes) {
        FireCase then = changed(now, changes);
        return judge.judge(then.cloth(), then.event());
    }

    private static FireCase changed(FireCase now, List<Change> changes) {
        FireCase then = now;
        for (Change change : changes) {
            then = change.in(then);
        }
        return then;
    }

    private Better better(FireCase now, Gate from, List<Change> changes) {
        FireJudgement then = judge(now, changes);
        List<Change> named = changes.stream()
                .map(change -> change instanceof OtherBlend blend ? named(now, changes, blend, then) : change)
                .toList();
        return new Better(named, now, from, then);
    }

    /** With every fibre that may stand in the place of the first and comes to the same verdict. */
    private Change named(FireCase now, List<Change> changes, OtherBlend blend, FireJudgement then) {
        List<Fibre> others = new ArrayList<>(blend.inPlace());
        for (Fibre fibre : dials.inPlaceOf(blend.fibres())) {
            OtherBlend other = blend.with(List.of(fibre));
            List<Change> instead =
                    changes.stream().map(c -> c.equals(blend) ? other : c).toList();
            if (!others.contains(fibre) && reaches(now, instead, then.gate()) && alike(judge(now, instead), then)) {
                others.add(fibre);
            }
        }
        return blend.with(others);
    }

    private static boolean alike(FireJudgement one, FireJudgement other) {
        return one.gate() == other.gate() && Better.gradeOf(one).equals(Better.gradeOf(other));
    }

    /** Of the same kinds with the same outcome only the least: of several blends that which exchanges least. */
    private static List<Better> leastOfEachKind(List<Better> found) {
        List<Better> sorted = found.stream()
                .sorted(Comparator.comparingInt(WhatIf::effort)
                        .thenComparing(better -> better.wouldBe().ordinal(), Comparator.reverseOrder())
                        .thenComparingDouble(WhatIf::exchangedPercent))
                .toList();
        List<Better> least = new ArrayList<>();
        for (Better better : sorted) {
            if (least.stream().noneMatch(b -> b.wouldBe() == better.wouldBe() && kinds(b).equals(kinds(better)))) {
                least.add(better);
            }
        }
        return least;
    }

    private static List<Change.Kind> kinds(Better better) {
        return better.changes().stream().map(Change::kind).toList();
    }

    private static int effort(Better better) {
        return better.changes().stream().mapToInt(c -> c.kind().ordinal()).sum();
    }

    private static double exchangedPercent(Better better) {
        Blend blend = better.before().cloth().blend();
        return better.changes().stream()
                .mapToDouble(c -> c instanceof OtherBlend other ? other.exchangedPercent(blend) : 0)
                .sum();
    }
}
