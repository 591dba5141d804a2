package campcloth.pages.events;

import campcloth.event.Event;
import campcloth.event.EventDates;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.event.Spell;
import campcloth.fibre.Fibres;
import campcloth.figure.DayText;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** An event as it is typed. */
public final class EventForm {

    private static final Pattern IN_A_LIST = Pattern.compile("(forbiddenFibres|allowedFibres)\\[\\d+]$");

    /** The version that was shown; what was changed since is not overwritten. Empty for a new event. */
    public @Nullable Long version;

    public @Nullable String name;
    public @Nullable Season season;
    public @Nullable String startsOn;
    public @Nullable String endsOn;
    public @Nullable Double latitudeDeg;
    public List<SpellForm> spells = new ArrayList<>();
    public List<RuleForm> rules = new ArrayList<>();

    static EventForm usual(Season season, Seasons seasons) {
        EventForm form = new EventForm();
        form.season = season;
        form.takeSpells(seasons.spells(season));
        return form;
    }

    static EventForm of(Event event) {
        EventForm form = new EventForm();
        form.name = event.name().isEmpty() ? null : event.name();
        form.season = event.season();
        form.startsOn = event.dates().map(days -> days.startsOn().toString()).orElse(null);
        form.endsOn = event.dates().map(days -> days.endsOn().toString()).orElse(null);
        form.latitudeDeg = event.latitudeDeg().orElse(null);
        form.takeSpells(event.spells());
        form.rules = new ArrayList<>(event.rules().stream().map(RuleForm::of).toList());
        return form;
    }

    void takeSpells(List<Spell> others) {
        spells = new ArrayList<>(others.stream().map(SpellForm::of).toList());
    }

    /** Numbers of the spells that are shown. */
    public List<Integer> spellsShown() {
        return IntStream.range(0, spells.size())
                .filter(i -> !spells.get(i).gone)
                .boxed()
                .toList();
    }

    /** Numbers of the rules that are shown. */
    public List<Integer> rulesShown() {
        return IntStream.range(0, rules.size())
                .filter(i -> !rules.get(i).gone)
                .boxed()
                .toList();
    }

    /** Where the form has the field that the core refuses by this path. */
    static String field(String path) {
        return IN_A_LIST.matcher(path).replaceFirst("$1");
    }

    /**
     * The event; refuses everything that cannot be used at once.
     *
     * @param before the event that is changed, if any: spells presumed stay so while they are left as they are
     */
    Event event(Seasons seasons, Fibres fibres, Optional<Event> before) {
        List<Refusal> refusals = new ArrayList<>();
        Season chosen = season;
        List<Spell> typed = spellsShown().stream()
                .flatMap(i ->
                        part("spells[" + i + "]", refusals, () -> spells.get(i).spell(latitudeDeg != null)).stream())
                .toList();
        List<SafetyRule> ruled = rules(fibres, refusals);
        Optional<Optional<EventDates>> dates = part("", refusals, this::dates);
        if (chosen == null) {
            refusals.add(new Refusal("season", "is missing", "choose the season"));
        }
        if (chosen == null || !refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        boolean presumed = typed.equals(seasons.spells(chosen))
                || before.filter(e -> e.spellsPresumed() && e.spells().equals(typed))
                        .isPresent();
        return new Event(
                name == null ? "" : name,
                chosen,
                typed,
                ruled,
                presumed,
                dates.flatMap(days -> days),
                Optional.ofNullable(latitudeDeg));
    }

    /** The rules alone; refuses everything in them that cannot be used at once. */
    List<SafetyRule> rules(Fibres fibres) {
        List<Refusal> refusals = new ArrayList<>();
        List<SafetyRule> typed = rules(fibres, refusals);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        return typed;
    }

    private List<SafetyRule> rules(Fibres fibres, List<Refusal> refusals) {
        return rulesShown().stream()
                .flatMap(i ->
                        part("rules[" + i + "]", refusals, () -> rules.get(i).rule(fibres)).stream())
                .toList();
    }

    private Optional<EventDates> dates() {
        return EventDates.told(
                DayText.day("startsOn", Optional.ofNullable(startsOn)),
                DayText.day("endsOn", Optional.ofNullable(endsOn)));
    }

    private static <T> Optional<T> part(String owner, List<Refusal> refusals, Supplier<T> part) {
        try {
            return Optional.of(part.get());
        } catch (Refused refused) {
            refused.refusals().forEach(r -> refusals.add(owner.isEmpty() ? r : r.within(owner)));
            return Optional.empty();
        }
    }
}
