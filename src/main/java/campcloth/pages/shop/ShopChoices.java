package campcloth.pages.shop;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Season;
import campcloth.fibre.LabelVocabulary;
import campcloth.garment.Designs;
import campcloth.garment.Sizes;
import campcloth.pages.Choice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** The lists of the form. */
@Component
class ShopChoices {

    private static final List<String> CURRENCIES =
            List.of("EUR", "GBP", "USD", "CHF", "CZK", "DKK", "NOK", "PLN", "SEK", "AUD", "CAD", "NZD");

    private final Events events;
    private final Sizes sizes;
    private final LabelVocabulary vocabulary;
    private final MessageSource texts;

    ShopChoices(Events events, Sizes sizes, LabelVocabulary vocabulary, MessageSource texts) {
        this.events = events;
        this.sizes = sizes;
        this.vocabulary = vocabulary;
        this.texts = texts;
    }

    void into(Model model) {
        model.addAttribute("events", events());
        model.addAttribute("seasons", named("season", Season.values()));
        model.addAttribute(
                "designs", after("design", Designs.all(), design -> new Choice(design.key(), design.name())));
        model.addAttribute("sizes", after("size", sizes.all(), size -> new Choice(size.key(), size.name())));
        model.addAttribute("faces", named("face", ShopForm.Face.values()));
        model.addAttribute("bounds", named("bound", ShopForm.Bound.values()));
        model.addAttribute("dones", named("done", ShopForm.Done.values()));
        model.addAttribute(
                "currencies",
                CURRENCIES.stream().map(key -> new Choice(key, key)).toList());
        model.addAttribute(
                "languages",
                after("language", List.copyOf(vocabulary.languages()), key -> new Choice(key, language(key))));
    }

    private List<Choice> events() {
        List<Choice> choices = new ArrayList<>(List.of(none("event")));
        events.each(kept -> choices.add(new Choice(kept.id(), name(kept.event(), kept.id()))));
        return choices;
    }

    private static String name(Event event, String id) {
        return event.name().isBlank() ? id : event.name();
    }

    private static String language(String key) {
        return Locale.forLanguageTag(key).getDisplayLanguage(Locale.ENGLISH);
    }

    private List<Choice> named(String list, Enum<?>... values) {
        return after(list, Arrays.asList(values), value -> new Choice(value.name(), text(list + "." + value.name())));
    }

    private <T> List<Choice> after(String list, List<T> values, Function<T, Choice> choice) {
        return Stream.concat(Stream.of(none(list)), values.stream().map(choice)).toList();
    }

    private Choice none(String list) {
        return new Choice("", text(list + ".none"));
    }

    private String text(String key) {
        return texts.getMessage("shop." + key, null, Locale.ENGLISH);
    }
}
