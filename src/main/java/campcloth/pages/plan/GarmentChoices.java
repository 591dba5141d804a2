package campcloth.pages.plan;

import campcloth.errand.TakenEvent;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.fire.ClothingUse;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.Sizes;
import campcloth.pages.Choice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;

/** What can be chosen on the form for event and garment. */
@Component
public class GarmentChoices {

    /** More are not listed: who has so many comes from the list of events. */
    private static final int MOST_EVENTS = 200;

    private static final String FIRST_DESIGN = "tunic";

    private final Events events;
    private final Seasons seasons;
    private final Sizes sizes;
    private final Fibres fibres;
    private final MessageSource texts;

    GarmentChoices(Events events, Seasons seasons, Sizes sizes, Fibres fibres, MessageSource texts) {
        this.events = events;
        this.seasons = seasons;
        this.sizes = sizes;
        this.fibres = fibres;
        this.texts = texts;
    }

    /** Fills in what somebody who comes for the first time would take, and puts all choices into the page's model. */
    void into(Model model, AskedForm form, BindingResult binding) {
        if (form.season == null) {
            form.season = Season.SUMMER;
        }
        Design design = Designs.all().stream()
                .filter(known -> known.key().equals(form.design))
                .findFirst()
                .orElseGet(() -> Designs.named(FIRST_DESIGN));
        form.design = design.key();
        SimpleDay usual = SimpleDay.usual(form.season, seasons);
        model.addAttribute(
                "usual",
                Map.of(
                        "day", UsualSpell.of(usual.day()),
                        "evening", UsualSpell.of(usual.evening()),
                        "night", UsualSpell.of(usual.night())));
        model.addAttribute("dayOpen", form.tellsDay() || hasErrors(binding, "day.", "evening.", "night."));
        model.addAttribute("measuresOpen", form.tellsMeasures() || hasErrors(binding, "measures"));
        Optional<KeptEvent> chosen = chosen(form);
        model.addAttribute("events", eventChoices(chosen));
        model.addAttribute("designs", Designs.all());
        model.addAttribute("design", design);
        model.addAttribute("measures", MeasureLine.of(design));
        model.addAttribute("sizes", sizeChoices(sizes, text("plan.size.none")));
        model.addAttribute("seasons", words("plan.season", Season.values()));
        model.addAttribute("wornOpen", form.tellsWorn() || form.more != null || hasErrors(binding, "under[", "over["));
        model.addAttribute(
                "wornRows", Map.of("under", rows("under", form, binding), "over", rows("over", form, binding)));
        model.addAttribute("wornKinds", Map.of("under", WornForm.UNDER, "over", WornForm.OVER));
        model.addAttribute("wornCloths", PlainCloth.values());
        List<Choice> whens = new ArrayList<>(List.of(new Choice("", text("plan.worn.when.always"))));
        whens.addAll(words("plan.worn.when", WornForm.When.values()));
        model.addAttribute("wornWhens", whens);
        model.addAttribute("mostWorn", WornForm.MOST);
        model.addAttribute("uses", words("plan.use", ClothingUse.values()));
        chosen.ifPresent(kept -> model.addAttribute("chosen", EventLine.of(TakenEvent.of(kept), fibres)));
    }

    /** Numbers of the rows that are shown: those in which something was told, and an empty one where there is none or more are wanted. */
    private static List<Integer> rows(String side, AskedForm form, BindingResult binding) {
        List<WornForm> worn = side.equals("under") ? form.under : form.over;
        List<Integer> shown = new ArrayList<>();
        for (int i = 0; i < worn.size(); i++) {
            if (!worn.get(i).isEmpty() || hasErrors(binding, side + "[" + i + "]")) {
                shown.add(i);
            }
        }
        if (shown.isEmpty() || form.more != null && shown.size() < WornForm.MOST) {
            shown.add(worn.size());
            worn.add(new WornForm());
        }
        return shown;
    }

    private static boolean hasErrors(BindingResult binding, String... starts) {
        return binding.getFieldErrors().stream()
                .anyMatch(error -> Arrays.stream(starts).anyMatch(error.getField()::startsWith));
    }

    private Optional<KeptEvent> chosen(AskedForm form) {
        return Optional.ofNullable(form.event).flatMap(events::byId);
    }

    /** Those listed, the one that was changed last first, and the one that is asked about where it is older or only shared. */
    private List<Choice> eventChoices(Optional<KeptEvent> chosen) {
        List<Choice> choices = new ArrayList<>();
        events.latest(0, MOST_EVENTS).events().forEach(kept -> choices.add(new Choice(kept.id(), label(kept.event()))));
        chosen.filter(kept ->
                        choices.stream().noneMatch(choice -> choice.value().equals(kept.id())))
                .ifPresent(kept -> choices.add(new Choice(kept.id(), label(kept.event()))));
        choices.add(new Choice("", text("plan.event.none")));
        return choices;
    }

    private String label(Event event) {
        String name = event.name().isBlank() ? text("plan.event.unnamed") : Isolated.text(event.name());
        return name + ", " + text("plan.season." + event.season())
                + event.dates().map(days -> ", " + days.startsOn()).orElse("");
    }

    /** All sizes, after a choice that says there is none. */
    public static List<Choice> sizeChoices(Sizes sizes, String none) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", none));
        sizes.all().forEach(size -> choices.add(new Choice(size.key(), size.key() + ", " + size.name())));
        return choices;
    }

    List<Choice> words(String family, Enum<?>[] values) {
        return Arrays.stream(values)
                .map(value -> new Choice(value.name(), text(family + "." + value.name())))
                .toList();
    }

    String text(String key) {
        return texts.getMessage(key, null, Locale.ENGLISH);
    }
}
