package campcloth.pages.cloths;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.fibre.Fibres;
import campcloth.fibre.LabelVocabulary;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.pages.Choice;
import campcloth.pages.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;

/** Shows the form for a cloth, with what there is to choose and what is known of the figures. */
@Component
class ClothFormView {

    private static final List<Property> FIRST =
            List.of(Property.WEIGHT_GSM, Property.WIDTH_CM, Property.PRICE_PER_METRE);

    private final Fibres fibres;
    private final LabelVocabulary vocabulary;
    private final MessageSource texts;

    ClothFormView(Fibres fibres, LabelVocabulary vocabulary, MessageSource texts) {
        this.fibres = fibres;
        this.vocabulary = vocabulary;
        this.texts = texts;
    }

    /**
     * A figure to type.
     *
     * @param field its path in the form
     * @param label how it is called
     * @param hint what stands there now and how it is known; empty where nothing does
     * @param measure name of the measure where readers have units of their own, else the unit
     */
    public record Line(String field, String label, String hint, String measure) {}

    /** @param before the cloth that the form began from */
    ModelAndView shown(ClothForm form, Optional<Cloth> before, Units units, HttpStatus status) {
        form.pad(false);
        ModelAndView page = new ModelAndView("cloths/form", status);
        page.addObject("form", form);
        page.addObject("fibres", fibreChoices());
        page.addObject("languages", languages());
        page.addObject("weaves", choices(Weave.values(), Weave::words));
        page.addObject("finishes", choices(Finish.values(), Finish::words));
        page.addObject("surfaces", choices(Surface.values(), surface -> text("cloths.surface." + surface)));
        page.addObject(
                "treatments", choices(FlameTreatment.values(), treatment -> text("cloths.treatment." + treatment)));
        page.addObject(
                "yesNo",
                List.of(
                        untold(),
                        new Choice("true", text("cloths.form.yes")),
                        new Choice("false", text("cloths.form.no"))));
        page.addObject("first", lines(FIRST, before, units));
        page.addObject(
                "others",
                lines(
                        Arrays.stream(Property.values())
                                .filter(property -> !FIRST.contains(property))
                                .toList(),
                        before,
                        units));
        return page;
    }

    /** What is kept by now and what was typed; what nobody touched is taken from what is kept. */
    ModelAndView conflict(ClothForm form, KeptCloth now, Fibres known, Units units) {
        TypedFigures kept = TypedFigures.of(now.cloth());
        for (Property property : Property.values()) {
            if (form.isUntouched(property)) {
                form.figures.set(property, kept.get(property));
            }
        }
        form.shown = kept;
        form.version = now.version();
        Cloth typed = form.cloth(known, now.cloth().figures());
        return shown(form, Optional.of(now.cloth()), units, HttpStatus.CONFLICT)
                .addObject("conflicts", Conflict.between(now.cloth(), typed, units, this::text));
    }

    private List<Line> lines(List<Property> properties, Optional<Cloth> before, Units units) {
        return properties.stream()
                .map(property -> line(property, before, units))
                .toList();
    }

    private Line line(Property property, Optional<Cloth> before, Units units) {
        String measure = switch (property) {
            case WEIGHT_GSM -> "WEIGHT_GSM";
            case WIDTH_CM -> "LENGTH_CM";
            case PRICE_PER_METRE -> "PRICE_PER_METRE";
            default -> Amounts.readable(property.unit());
        };
        String hint = before.flatMap(cloth -> cloth.figure(property))
                .map(figure -> now(property, figure, units))
                .orElse("");
        return new Line("figures." + property.field(), text("cloths.figure." + property.field()), hint, measure);
    }

    private String now(Property property, Figure figure, Units units) {
        String value = Amounts.of(property.field(), property.unit(), figure, units);
        String interval = Amounts.interval(property.field(), property.unit(), figure, units);
        String basis = text("cloths.basis." + figure.basis());
        String now = interval.isEmpty()
                ? text("cloths.form.now", value, basis)
                : text("cloths.form.now.interval", value, interval, basis);
        return figure.basis() == Basis.MEASURED ? now + " " + text("cloths.form.measured") : now;
    }

    private List<Choice> fibreChoices() {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", text("cloths.form.none")));
        fibres.all().forEach(fibre -> choices.add(new Choice(fibre.key(), fibre.name())));
        return choices;
    }

    private List<Choice> languages() {
        Map<String, String> byName = new LinkedHashMap<>();
        byName.put(text("cloths.form.language.any"), "");
        vocabulary.languages().stream()
                .sorted()
                .forEach(key -> byName.put(Locale.forLanguageTag(key).getDisplayLanguage(Locale.ENGLISH), key));
        return byName.entrySet().stream()
                .map(entry -> new Choice(entry.getValue(), entry.getKey()))
                .toList();
    }

    private <E extends Enum<E>> List<Choice> choices(E[] values, Function<E, String> words) {
        List<Choice> choices = new ArrayList<>();
        choices.add(untold());
        Arrays.stream(values).forEach(value -> choices.add(new Choice(value.name(), words.apply(value))));
        return choices;
    }

    private Choice untold() {
        return new Choice("", text("cloths.form.untold"));
    }

    String text(String key, Object... with) {
        return texts.getMessage(key, with, Locale.ENGLISH);
    }
}
