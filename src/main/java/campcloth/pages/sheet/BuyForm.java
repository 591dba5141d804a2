package campcloth.pages.sheet;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.cloth.UsableWidth;
import campcloth.errand.WantedGarment;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.garment.Design;
import campcloth.garment.Option;
import campcloth.garment.SewnBy;
import campcloth.garment.Sizes;
import campcloth.layout.Repeat;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import campcloth.plan.ClothToCut;
import campcloth.plan.CuttingOrder;
import campcloth.plan.Fold;
import campcloth.plan.Money;
import campcloth.plan.Particulars;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What the shop tells of the cloth, and how the garment is cut and sewn. What is left empty is as usual, or as on file. */
public class BuyForm {

    private static final String SOURCE = "told by the shop";
    private static final String USUAL_CURRENCY = "EUR";
    private static final String OPTIONS = "options.";
    private static final Pattern LINE = Pattern.compile("garments\\[(\\d{1,3})]\\.wearer\\.\\w+");

    public @Nullable String title;

    /** How many alike for the first wearer. */
    public @Nullable Integer count;

    public WearerForm wearer = new WearerForm();

    /** For whom else the same is cut from the same cloth. */
    public List<WearerForm> others = new ArrayList<>();

    @TypedIn(Units.Measure.LENGTH_CM)
    public @Nullable Double widthCm;

    @TypedIn(Units.Measure.PRICE_PER_METRE)
    public @Nullable Double pricePerMetre;

    public @Nullable String currency;

    @TypedIn(Units.Measure.LENGTH_CM)
    public @Nullable Double shopStepCm;

    @TypedIn(Units.Measure.LENGTH_CM)
    public @Nullable Double remnantLengthCm;

    @TypedIn(Units.Measure.LENGTH_CM)
    public @Nullable Double repeatLengthCm;

    @TypedIn(Units.Measure.LENGTH_CM)
    public @Nullable Double repeatWidthCm;

    public @Nullable Fold fold;
    public @Nullable SewnBy sewnBy;
    public boolean prewash;

    /** Options of the design that are ticked or not, by key. */
    public Map<String, @Nullable Boolean> yes = new LinkedHashMap<>();

    /** Options that are lengths. */
    @TypedIn(Units.Measure.LENGTH_CM)
    public Map<String, @Nullable Double> lengths = new LinkedHashMap<>();

    /** Options that are numbers of things. */
    public Map<String, @Nullable Integer> counts = new LinkedHashMap<>();

    /** As it is shown first: one garment, washed first, every option as usual. */
    static BuyForm usual(Design design, WantedGarment asked) {
        BuyForm form = new BuyForm();
        form.take(asked);
        form.count = 1;
        form.prewash = true;
        for (Option option : design.options()) {
            if (option.value() instanceof Option.YesNo yesNo) {
                form.yes.put(option.key(), yesNo.usual());
            }
        }
        return form;
    }

    /** The wearer as told with the event, where this form did not ask. */
    void take(WantedGarment asked) {
        if (!wearer.told) {
            wearer.size = asked.size().orElse(null);
            wearer.measures = new LinkedHashMap<>(asked.wearerCm());
        }
    }

    /** Numbers of the other wearers that are shown. */
    public List<Integer> othersShown() {
        return IntStream.range(0, others.size())
                .filter(i -> !others.get(i).gone)
                .boxed()
                .toList();
    }

    /** The field of this form that a path of the core means. */
    static String field(String path, Design design) {
        String last = path.substring(path.lastIndexOf('.') + 1);
        if (!path.contains(OPTIONS)) {
            return ofWearer(path, last).orElse(last);
        }
        return design.options().stream()
                .filter(option -> option.key().equals(last))
                .findFirst()
                .map(BuyForm::field)
                .orElse(path);
    }

    /** Where something of a wearer is typed: the core calls the first of its lines the first wearer. */
    private static Optional<String> ofWearer(String path, String last) {
        Matcher line = LINE.matcher(path);
        if (line.matches()) {
            int number = Integer.parseInt(line.group(1));
            String whose = number == 0 ? "wearer" : "others[" + (number - 1) + "]";
            return Optional.of(whose + ".measures[" + last + "]");
        }
        if (path.equals("size")) {
            return Optional.of("wearer.size");
        }
        if (path.equals("wearerName")) {
            return Optional.of("wearer.name");
        }
        return path.startsWith("others") ? Optional.of(path) : Optional.empty();
    }

    /** Where an option is typed. */
    static String field(Option option) {
        String map = option.value() instanceof Option.YesNo
                ? "yes"
                : option.value() instanceof Option.Cm ? "lengths" : "counts";
        return map + "[" + option.key() + "]";
    }

    /** The cloth with what the shop says of it. */
    Cloth told(Cloth cloth) {
        Cloth told = cloth;
        if (widthCm != null) {
            told = told.with(Property.WIDTH_CM, told(widthCm));
        }
        return pricePerMetre == null ? told : told.with(Property.PRICE_PER_METRE, told(pricePerMetre));
    }

    private static Figure told(double value) {
        return Figure.exact(value, Basis.DECLARED, SOURCE);
    }

    /** The garment as asked, with how many and which options. */
    WantedGarment garment(WantedGarment asked, Design design) {
        return new WantedGarment(
                asked.design(),
                wearer.measuredCm(design),
                wearer.chosenSize(),
                asked.touchesSkin(),
                count == null ? 1 : count,
                options(design),
                asked.outfit(),
                wearer.calledName(),
                IntStream.range(0, others.size())
                        .mapToObj(i -> others.get(i).other(design, i))
                        .toList());
    }

    private Map<String, Object> options(Design design) {
        Map<String, Object> options = new TreeMap<>();
        for (Option option : design.options()) {
            Object chosen = chosen(option);
            if (chosen != null) {
                options.put(option.key(), chosen);
            }
        }
        return options;
    }

    private @Nullable Object chosen(Option option) {
        if (option.value() instanceof Option.YesNo) {
            return yes.get(option.key());
        }
        if (option.value() instanceof Option.Cm) {
            return lengths.get(option.key());
        }
        return counts.get(option.key());
    }

    CuttingOrder order(Cloth told, WantedGarment garment, Sizes sizes) {
        ClothToCut cloth = ClothToCut.of(told, UsableWidth.USUAL_SELVEDGE_CM, prewash);
        return new CuttingOrder(
                cloth.price()
                        .map(price -> cloth.at(new Money(price.amount(), currency())))
                        .orElse(cloth),
                garment.lines(sizes),
                Optional.ofNullable(remnantLengthCm),
                fold == null ? Fold.ANY : fold,
                shopStepCm == null ? CuttingOrder.USUAL_STEP_CM : shopStepCm,
                new Particulars(sewnBy == null ? SewnBy.MACHINE : sewnBy, List.of(), repeat()));
    }

    /** Prices on file are in euro. */
    private String currency() {
        return currency == null || pricePerMetre == null ? USUAL_CURRENCY : currency;
    }

    private Optional<Repeat> repeat() {
        return repeatLengthCm == null && repeatWidthCm == null
                ? Optional.empty()
                : Optional.of(Repeat.every(Optional.ofNullable(repeatLengthCm), Optional.ofNullable(repeatWidthCm)));
    }
}
