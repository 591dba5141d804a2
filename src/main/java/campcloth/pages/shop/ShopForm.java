package campcloth.pages.shop;

import campcloth.cloth.Finish;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.ToldMake;
import campcloth.cloth.Weave;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import campcloth.pages.plan.AskedForm;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A bale as somebody sees and feels it in a shop, with the event and the garment that it is for. */
public final class ShopForm extends AskedForm {

    private static final String SHOP = "stated in the shop";
    private static final Pattern PATH = Pattern.compile("[A-Za-z.]+(\\[[A-Za-z0-9]+])?(\\.[A-Za-z]+)?");
    private static final Set<String> SHOWN = Set.of("event", "key", "season", "design", "size");

    /** How the face looks. */
    public enum Face {
        SMOOTH,
        RAISED,
        LONG
    }

    /** How the threads are bound, in simple words. */
    public enum Bound {
        WOVEN(Weave.PLAIN),
        LOOSE(Weave.OPEN_PLAIN),
        TWILL(Weave.TWILL),
        KNIT(Weave.JERSEY),
        FELT(Weave.FELT);

        private final Weave weave;

        Bound(Weave weave) {
            this.weave = weave;
        }
    }

    /** What was done to it. */
    public enum Done {
        WASHED(Finish.WASHED),
        WAXED(Finish.WAXED),
        COATED(Finish.COATED);

        private final Finish finish;

        Done(Finish finish) {
            this.finish = finish;
        }
    }

    public @Nullable String label;

    /** There is no label, or it is not believed: what is typed of it does not count. */
    public @Nullable Boolean unlabelled;

    /** ISO 639-1 key. */
    public @Nullable String language;

    public @Nullable Face face;
    public @Nullable Bound bound;
    public @Nullable Done done;
    public @Nullable Boolean stretch;

    @TypedIn(Units.Measure.WEIGHT_GSM)
    public @Nullable Double weightGsm;

    @TypedIn(Units.Measure.LENGTH_CM)
    public @Nullable Double widthCm;

    @TypedIn(Units.Measure.PRICE_PER_METRE)
    public @Nullable Double pricePerMetre;

    /** Three letters of ISO 4217. */
    public @Nullable String currency;

    /** Paths of what the address tells of event and garment and this form shows no field for. */
    List<String> carried() {
        return Stream.of(query().split("&"))
                .map(part -> URLDecoder.decode(part.split("=", 2)[0], StandardCharsets.UTF_8))
                .filter(path -> PATH.matcher(path).matches() && !SHOWN.contains(path))
                .toList();
    }

    /** The label's text; empty where there is none. */
    Optional<String> labelText() {
        return Boolean.TRUE.equals(unlabelled) ? Optional.empty() : Optional.ofNullable(label);
    }

    ToldMake make() {
        return new ToldMake(
                Optional.ofNullable(weave()),
                Optional.ofNullable(face).map(f -> f == Face.SMOOTH ? Surface.PLAIN : Surface.RAISED),
                Optional.ofNullable(done).map(d -> d.finish),
                face == Face.RAISED ? Optional.of(true) : Optional.empty(),
                Boolean.TRUE.equals(stretch) ? Optional.of(true) : Optional.empty());
    }

    private @Nullable Weave weave() {
        if (face == Face.LONG) {
            return Weave.FUR;
        }
        if (bound == Bound.KNIT && face == Face.RAISED) {
            return Weave.FLEECE;
        }
        return bound == null ? null : bound.weave;
    }

    /** What the shop says of it; refuses what no cloth has. */
    Map<Property, Figure> figures() {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        put(figures, Property.WEIGHT_GSM, weightGsm);
        put(figures, Property.WIDTH_CM, widthCm);
        put(figures, Property.PRICE_PER_METRE, pricePerMetre);
        return figures;
    }

    private static void put(Map<Property, Figure> figures, Property property, @Nullable Double value) {
        if (value != null) {
            property.range().check(value);
            figures.put(property, Figure.exact(value, Basis.DECLARED, SHOP));
        }
    }
}
