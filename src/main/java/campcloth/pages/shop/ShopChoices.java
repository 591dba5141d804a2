package campcloth.pages.shop;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.fibre.LabelVocabulary;
import campcloth.garment.Designs;
import campcloth.garment.Sizes;
import campcloth.pages.Choice;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

    private static final String NONE = "none";

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

    void into(Model model, ShopForm form) {
        model.addAttribute("events", events(Optional.ofNullable(form.event).flatMap(events::byId)));
        model.addAttribute(
                "seasons",
                texts(
                        "shop.season.none",
                        "shop.season.SPRING",
                        "shop.season.SUMMER",
                        "shop.season.AUTUMN",
                        "shop.season.WINTER"));
        model.addAttribute("faces", texts("shop.face.none", "shop.face.SMOOTH", "shop.face.RAISED", "shop.face.LONG"));
        model.addAttribute(
                "bounds",
                texts(
                        "shop.bound.none",
                        "shop.bound.WOVEN",
                        "shop.bound.LOOSE",
                        "shop.bound.TWILL",
                        "shop.bound.KNIT",
                        "shop.bound.FELT"));
        model.addAttribute("dones", texts("shop.done.none", "shop.done.WASHED", "shop.done.WAXED", "shop.done.COATED"));
        model.addAttribute(
                "designs", after("shop.design.none", Designs.all(), design -> new Choice(design.key(), design.name())));
        model.addAttribute("sizes", after("shop.size.none", sizes.all(), size -> new Choice(size.key(), size.name())));
        model.addAttribute(
                "currencies",
                CURRENCIES.stream().map(key -> new Choice(key, key)).toList());
        model.addAttribute(
                "languages",
                after("shop.language.none", vocabulary.languages(), key -> new Choice(key, language(key))));
    }

    /** Those listed, and the one that is asked about where it is only shared. */
    private List<Choice> events(Optional<KeptEvent> chosen) {
        List<Choice> choices = new ArrayList<>(texts("shop.event.none"));
        events.each(kept -> choices.add(new Choice(kept.id(), name(kept.event(), kept.id()))));
        chosen.filter(kept ->
                        choices.stream().noneMatch(choice -> choice.value().equals(kept.id())))
                .ifPresent(kept -> choices.add(new Choice(kept.id(), name(kept.event(), kept.id()))));
        return choices;
    }

    private static String name(Event event, String id) {
        return event.name().isBlank() ? id : event.name();
    }

    private static String language(String key) {
        return Locale.forLanguageTag(key).getDisplayLanguage(Locale.ENGLISH);
    }

    private <T> List<Choice> after(String none, Collection<T> values, Function<T, Choice> choice) {
        return Stream.concat(texts(none).stream(), values.stream().map(choice)).toList();
    }

    /** Choices by the keys of their texts: the value is what stands behind the last point, or nothing for {@code none}. */
    private List<Choice> texts(String... keys) {
        return Stream.of(keys).map(key -> new Choice(value(key), text(key))).toList();
    }

    private static String value(String key) {
        String last = key.substring(key.lastIndexOf('.') + 1);
        return last.equals(NONE) ? "" : last;
    }

    private String text(String key) {
        return texts.getMessage(key, null, Locale.ENGLISH);
    }
}
