package campcloth.pages.events;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.cloth.ShippedCatalogue;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.EventDates;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Provenance;
import campcloth.event.RuleConditions;
import campcloth.event.RuleReach;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.event.Shelter;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.event.Wetness;
import campcloth.fibre.Fibres;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What the form says of an event is the event; what its buttons do to rows; everything refused is told at once, at its field. */
class EventFormTest {

    private static final int CASES = 2000;
    private static final LocalDate DAY = LocalDate.of(2027, 7, 16);

    private final Seasons seasons = ShippedCatalogue.get().seasons();
    private final Fibres fibres = ShippedCatalogue.get().fibres();

    @Test
    void theFormOfAnEventIsTheEvent() {
        for (long seed = 1; seed <= CASES; seed++) {
            Event event = event(new SplittableRandom(seed));
            Event read = EventForm.of(event).event(seasons, fibres, Optional.of(event));
            assertThat(read).as("seed %d", seed).isEqualTo(event);
        }
    }

    @Test
    void everythingThatCannotBeUsedIsRefusedAtOnceAtItsOwnField() {
        EventForm form = EventForm.usual(Season.SUMMER, seasons);
        form.spells.get(0).airC = 70.0;
        form.spells.get(1).windMs = null;
        form.spells.get(2).fireRole = null;
        form.endsOn = "2027-07-16";
        RuleForm rule = new RuleForm();
        rule.authority = Authority.VENUE;
        rule.statement = "Nothing that melts";
        rule.forbiddenFibres = "nylon, mithril";
        form.rules.add(rule);
        form.rules.add(new RuleForm());
        assertThatThrownBy(() -> form.event(seasons, fibres, Optional.empty()))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals())
                                .extracting(Refusal::field)
                                .extracting(EventForm::field)
                                .containsExactlyInAnyOrder(
                                        "spells[0].airC",
                                        "spells[1].windMs",
                                        "spells[2].fireRole",
                                        "startsOn",
                                        "rules[0].forbiddenFibres",
                                        "rules[1].authority"));
    }

    @Test
    void rowsKeepTheirNumbersUntilEverythingTypedCanBeRead() {
        EventForm form = EventForm.usual(Season.SUMMER, seasons);
        Rows.pressed("remove-spell-1").orElseThrow().apply(form, seasons, false);
        assertThat(form.spells).hasSize(4);
        assertThat(form.spellsShown()).containsExactly(0, 2, 3);
        assertThat(form.event(seasons, fibres, Optional.empty()).spells()).hasSize(3);
        Rows.pressed("remove-spell-0").orElseThrow().apply(form, seasons, true);
        assertThat(form.spells).extracting(spell -> spell.name).containsExactly("evening fireside", "night");
    }

    @Test
    void noButtonMakesMoreRowsThanAnEventHas() {
        EventForm form = EventForm.usual(Season.SUMMER, seasons);
        for (int i = 0; i < 200; i++) {
            Rows.pressed("add-spell").orElseThrow().apply(form, seasons, true);
            Rows.pressed("add-rule").orElseThrow().apply(form, seasons, true);
        }
        assertThat(form.spells).hasSize(Event.MOST_SPELLS);
        assertThat(form.rules).hasSize(Event.MOST_RULES);
        assertThat(Rows.pressed("remove-spell-9999999")).isEmpty();
        assertThat(Rows.pressed("keep")).isEmpty();
        Rows.pressed("remove-spell-99").orElseThrow().apply(form, seasons, true);
        assertThat(form.spells).hasSize(Event.MOST_SPELLS);
    }

    @Test
    void usualSpellsCountAsPresumedAndChangedOnesAsTold() {
        EventForm form = EventForm.usual(Season.WINTER, seasons);
        assertThat(form.event(seasons, fibres, Optional.empty()).spellsPresumed())
                .isTrue();
        form.spells.get(0).airC = -4.0;
        assertThat(form.event(seasons, fibres, Optional.empty()).spellsPresumed())
                .isFalse();
    }

    private Event event(SplittableRandom random) {
        List<Spell> spells = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(4); i++) {
            spells.add(spell(random));
        }
        List<SafetyRule> rules = new ArrayList<>();
        for (int i = 0; i < random.nextInt(4); i++) {
            rules.add(rule(random));
        }
        return new Event(
                random.nextBoolean() ? "" : "Wendlow",
                one(random, Season.values()),
                spells,
                rules,
                random.nextBoolean(),
                maybe(random, new EventDates(DAY, DAY.plusDays(random.nextInt(3)))),
                maybe(random, random.nextDouble(-90, 90)));
    }

    private static Spell spell(SplittableRandom random) {
        Sky sky = new Sky(
                maybe(random, LocalTime.of(random.nextInt(24), random.nextInt(60))),
                maybe(random, random.nextDouble(0, 100)),
                maybe(random, one(random, Shelter.values())));
        return new Spell(
                "spell " + random.nextInt(),
                random.nextDouble(0.1, 72),
                random.nextDouble(-50, 55),
                random.nextDouble(0, 100),
                random.nextDouble(0, 40),
                random.nextBoolean() ? Sun.PART : Sun.NONE,
                one(random, Activity.values()),
                maybe(
                        random,
                        new OpenFire(
                                one(random, FireRole.values()),
                                maybe(random, random.nextDouble(0.1, 20)),
                                maybe(random, random.nextDouble(1, 1000)),
                                maybe(random, one(random, FireKind.values())))),
                sky.told(),
                maybe(random, one(random, Wetness.values())));
    }

    private static SafetyRule rule(SplittableRandom random) {
        return new SafetyRule(
                one(random, Authority.values()),
                "rule " + random.nextInt(),
                new RuleConditions(
                        maybe(random, random.nextDouble(0, 100)),
                        random.nextBoolean() ? Set.of() : Set.of("acrylic", "polyamide"),
                        random.nextBoolean() ? Set.of() : Set.of("wool", "flax"),
                        maybe(random, random.nextDouble(0, 2000)),
                        random.nextBoolean(),
                        random.nextBoolean(),
                        maybe(random, random.nextDouble(0.1, 20)),
                        maybe(random, "treated"),
                        maybe(random, "a paper"),
                        maybe(random, "ask the marshal")),
                new RuleReach(
                        maybe(random, random.nextDouble(0, 20)),
                        random.nextBoolean() ? Set.of() : Set.of(FireRole.COOKING, FireRole.SEATED)),
                new Provenance(
                        maybe(random, "a board"),
                        maybe(random, DAY),
                        maybe(random, "3"),
                        maybe(random, DAY),
                        maybe(random, DAY.plusDays(1))));
    }

    private static <T> Optional<T> maybe(SplittableRandom random, T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }

    private static <T> T one(SplittableRandom random, T[] values) {
        return values[random.nextInt(values.length)];
    }
}
