package campcloth.fire;

import static campcloth.fire.Draw.claim;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.SafetyRule;
import campcloth.fibre.FibreFamily;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.model.PointSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What the search for a better verdict claims, on drawn cloths, fires and rules, rebuilt here from its short description alone. */
class WhatIfPropertiesTest {

    private static final FireAdvice ADVICE = new FireAdvice(new FireRules(FireFixtures.FIBRES));
    private static final AtomicInteger JUDGED = new AtomicInteger();
    private static final WhatIf WHAT_IF = new WhatIf(WhatIfPropertiesTest::judge, FireFixtures.FIBRES);
    private static final int CASES = 3000;
    private static final int CASES_TWICE = 600;
    private static final double ROUNDING = 1e-9;
    private static final Pattern PROMISE = Pattern.compile("\\b(safe|safely|safety|fireproof|compliant|certified)\\b");

    /** The only mention of a rule is that it still has to be asked about, and that fire and rules were judged. */
    private static final Pattern OTHER_RULE =
            Pattern.compile("(?<!still )(?<!fire and )\\brules?\\b(?! of the (event|venue|local law) \")");

    private static FireJudgement judge(WornCloth cloth, Event event) {
        JUDGED.incrementAndGet();
        return ADVICE.judge(cloth, event);
    }

    private static FireJudgement judge(FireCase worn) {
        return judge(worn.cloth(), worn.event());
    }

    @Test
    void whatIsToldComesToTheVerdictToldAndALesserChangeDoesNot() {
        int before = JUDGED.get();
        AtomicInteger told = new AtomicInteger();
        Draw.often(CASES, 41_000_000, draw -> {
            FireCase now = CaseDraw.any(draw);
            Gate from = judge(now.cloth(), now.event()).gate();
            for (Better better : WHAT_IF.all(now, from)) {
                told.incrementAndGet();
                claim(better.wouldBe().compareTo(from) < 0, "worse or the same", better.text(), now);
                claimVerdict(now, better);
                claimNoLesserOneDoes(now, better);
                claimNothingIsNamedThatIsAdvisedAgainst(now, better);
                claimWords(better, from);
            }
        });
        assertThat(JUDGED.get() - before).isGreaterThan(Draw.CASES);
        assertThat(told.get()).isGreaterThan(CASES / 2);
    }

    @Test
    void anotherRuleNeverMakesItEasier() {
        AtomicInteger compared = new AtomicInteger();
        Draw.often(CASES_TWICE, 42_000_000, draw -> {
            FireCase now = CaseDraw.any(draw);
            List<SafetyRule> more = new ArrayList<>(now.event().rules());
            more.add(CaseDraw.rule(draw));
            FireCase ruled = new FireCase(now.cloth(), CaseDraw.withRules(now.event(), more));
            Gate from = judge(now.cloth(), now.event()).gate();
            List<Better> free = WHAT_IF.all(now, from);
            List<Better> bound =
                    WHAT_IF.all(ruled, judge(ruled.cloth(), ruled.event()).gate());
            for (Gate target : Arrays.asList(Gate.values()).subList(0, from.ordinal())) {
                for (Change.Kind kind : Change.Kind.values()) {
                    OptionalDouble harder = least(bound, kind, target);
                    OptionalDouble easier = least(free, kind, target);
                    if (harder.isPresent()) {
                        compared.incrementAndGet();
                        claim(
                                easier.isPresent() && easier.getAsDouble() <= harder.getAsDouble() + ROUNDING,
                                kind,
                                target,
                                easier,
                                harder,
                                now.cloth(),
                                now.event(),
                                more);
                    }
                }
            }
        });
        assertThat(compared.get()).isGreaterThan(CASES_TWICE / 2);
    }

    /** Judges the case as rebuilt from the words, with each of the fibres that may stand in place of others. */
    private static void claimVerdict(FireCase now, Better better) {
        int choices = better.changes().stream()
                .mapToInt(c -> c.to().split("/").length)
                .max()
                .orElseThrow();
        boolean blend = better.changes().stream().anyMatch(c -> c.kind() == Change.Kind.OTHER_BLEND);
        for (int choice = 0; choice < (blend ? choices : 1); choice++) {
            FireJudgement then = judge(Rebuilt.of(now, better.changes(), 0, Change.Kind.HEAVIER, choice));
            claim(then.gate() == better.wouldBe(), better.text(), then.gate(), now.cloth(), now.event());
            claim(
                    then.worst().map(w -> w.hazard().grade()).equals(better.grade()),
                    better.text(),
                    now.cloth(),
                    now.event());
        }
    }

    private static void claimNoLesserOneDoes(FireCase now, Better better) {
        for (Change change : better.changes()) {
            if (hasLesser(now, change)) {
                FireCase lesser = Rebuilt.of(now, better.changes(), 1, change.kind(), 0);
                claim(
                        judge(lesser).gate().compareTo(better.wouldBe()) > 0
                                || isAdvisedAgainst(better.changes(), now, lesser),
                        "one step less does too",
                        change.to(),
                        better.text(),
                        now.cloth(),
                        now.event());
            }
        }
    }

    private static void claimNothingIsNamedThatIsAdvisedAgainst(FireCase now, Better better) {
        FireCase then = Rebuilt.of(now, better.changes(), 0, Change.Kind.HEAVIER, 0);
        claim(!isAdvisedAgainst(better.changes(), now, then), better.text(), now.cloth(), now.event());
    }

    /** Too near for the cloth; a light blend of plant fibre and what melts; another blend that melts much or holds its melt. */
    private static boolean isAdvisedAgainst(List<Change> changes, FireCase now, FireCase then) {
        WornCloth cloth = then.cloth();
        double melts = cloth.blend().meltablePercent();
        boolean holds = melts >= 10 - ROUNDING && cloth.blend().percentOf(FibreFamily.CELLULOSIC) >= 10 - ROUNDING;
        boolean namedHolds = cloth.blend().percentOf(FibreFamily.MELTABLE) >= 10
                && cloth.blend().percentOf(FibreFamily.CELLULOSIC) >= 10;
        return changes.stream().anyMatch(change -> switch (change.kind()) {
            case KEEP_DISTANCE, STAY_OUT_OF_REACH ->
                IntStream.range(0, then.fires().size())
                        .filter(i -> moves(change, now.fires().get(i).role()))
                        .mapToObj(i -> then.fires().get(i))
                        .anyMatch(fire -> fire.distanceM().orElse(0.0)
                                < StandBack.of(cloth, fire.fireKw().orElse(100.0))
                                                .metres()
                                        - ROUNDING);
            case HEAVIER, PLAIN_SURFACE, NO_FILM -> namedHolds && cloth.weightGsm() < 136;
            case OTHER_BLEND -> melts > 20 + ROUNDING || holds || cloth.blend().percentOf("acrylic") >= 10 - ROUNDING;
            case OTHER_LAYER, OTHER_PART, CLOSE_FIT -> false;
        });
    }

    private static boolean moves(Change change, FireRole role) {
        return change.kind() == Change.Kind.KEEP_DISTANCE
                ? role.compareTo(FireRole.SEATED) <= 0
                : role.compareTo(FireRole.valueOf(change.to().split(" at ")[0])) > 0;
    }

    private static boolean hasLesser(FireCase now, Change change) {
        return switch (change.kind()) {
            case KEEP_DISTANCE ->
                now.fires().stream()
                        .allMatch(f -> Rebuilt.number(change.to()) - 0.1
                                >= Math.max(1, PointSource.nearFieldM(f.fireKw().orElse(100.0))));
            case HEAVIER ->
                Rebuilt.number(change.to()) - 10 > now.cloth().weight().lowGsm();
            case OTHER_BLEND ->
                !change.to().contains("unknown")
                        && !change.to().contains("other")
                        && Rebuilt.number(change.to()) + 1 < Rebuilt.percentOf(now, change.to()) - ROUNDING;
            default -> false;
        };
    }

    private static final Map<Gate, String> WORDS =
            Map.of(Gate.CLEAR, "nothing found against it", Gate.CAUTION, "with care", Gate.RULED_OUT, "ruled out");

    private static void claimWords(Better better, Gate from) {
        String text = better.text();
        claim(
                text.contains("would then be \"" + WORDS.get(better.wouldBe()) + "\" instead of \"" + WORDS.get(from)),
                text);
        claim(better.wouldBe() == Gate.CLEAR || text.contains(", no better, because "), text);
        claim(
                better.wouldBe() != Gate.CLEAR || from != Gate.RULED_OUT || text.contains("two steps"),
                "steps not told",
                text);
        claim(text.endsWith(".") && !PROMISE.matcher(text).find(), text);
        claim(!OTHER_RULE.matcher(text).find(), "touches a rule", text);
    }

    private static OptionalDouble least(List<Better> all, Change.Kind kind, Gate target) {
        ToDoubleFunction<Better> amount = better -> {
            Change change = better.changes().get(0);
            return switch (kind) {
                case KEEP_DISTANCE, HEAVIER -> Rebuilt.number(change.to());
                case STAY_OUT_OF_REACH ->
                    -FireRole.valueOf(change.to().split(" at ")[0]).ordinal();
                case OTHER_BLEND -> Rebuilt.percentOf(better.before(), change.to()) - Rebuilt.number(change.to());
                default -> 0;
            };
        };
        return all.stream()
                .filter(b -> b.changes().size() == 1 && b.changes().get(0).kind() == kind)
                .filter(b -> b.wouldBe().compareTo(target) <= 0)
                .mapToDouble(amount)
                .min();
    }
}
