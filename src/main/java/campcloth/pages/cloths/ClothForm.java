package campcloth.pages.cloths;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.ToldFigure;
import campcloth.cloth.ToldMake;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibres;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A cloth as it is typed. */
public final class ClothForm {

    private static final int ROWS = 4;

    public @Nullable String name;
    public @Nullable String label;
    public @Nullable String language;
    public List<ShareForm> blend = new ArrayList<>();
    public @Nullable Weave weave;
    public @Nullable Surface surface;
    public @Nullable Finish finish;
    public @Nullable Boolean nap;
    public @Nullable Boolean stretch;
    public @Nullable FlameTreatment flameTreatment;
    public TypedFigures figures = new TypedFigures();

    /** The same as they were shown, so that what nobody touched can be told from what was typed. */
    public TypedFigures shown = new TypedFigures();

    public @Nullable String note;

    /** Version of the cloth that was shown. */
    public @Nullable Long version;

    /** Id of the cloth that this one was begun from. */
    public @Nullable String from;

    static ClothForm of(Cloth cloth) {
        ClothForm form = new ClothForm();
        form.name = cloth.name();
        form.take(cloth.blend());
        form.weave = cloth.weave();
        form.surface = cloth.surface();
        form.finish = cloth.finish();
        form.nap = cloth.nap();
        form.stretch = cloth.stretch();
        form.flameTreatment = cloth.flameTreatment();
        form.figures = TypedFigures.of(cloth);
        form.shown = TypedFigures.of(cloth);
        form.note = cloth.note();
        return form;
    }

    void take(Blend read) {
        blend = new ArrayList<>();
        read.shares().forEach(share -> blend.add(new ShareForm(share.fibre().key(), share.percent())));
    }

    /** Rows to type into, one of them empty at least. */
    void pad(boolean more) {
        int filled = (int) blend.stream().filter(row -> !row.isEmpty()).count();
        int wanted = Math.max(Math.max(ROWS, filled + 1), blend.size() + (more ? 1 : 0));
        while (blend.size() < wanted) {
            blend.add(new ShareForm());
        }
    }

    boolean hasBlend() {
        return blend.stream().anyMatch(row -> !row.isEmpty());
    }

    /**
     * The cloth meant; refuses what it cannot be.
     *
     * @param before the figures that were shown: of those left as they were shown nothing is lost
     */
    Cloth cloth(Fibres fibres, Map<Property, Figure> before) {
        return new ToldMake(
                        Optional.ofNullable(weave),
                        Optional.ofNullable(surface),
                        Optional.ofNullable(finish),
                        Optional.ofNullable(nap),
                        Optional.ofNullable(stretch))
                .cloth(name == null ? "" : name, blend(fibres), known(before), note == null ? "" : note)
                .with(Objects.requireNonNullElse(flameTreatment, FlameTreatment.NONE));
    }

    private Blend blend(Fibres fibres) {
        List<Blend.Share> shares = new ArrayList<>();
        for (int i = 0; i < blend.size(); i++) {
            ShareForm row = blend.get(i);
            if (!row.isEmpty()) {
                shares.add(Refused.within("blend[" + i + "]", () -> share(row, fibres)));
            }
        }
        return new Blend(shares);
    }

    private static Blend.Share share(ShareForm row, Fibres fibres) {
        if (row.fibre == null) {
            throw Refused.of("fibre", "is missing", "name the fibre of this share");
        }
        if (row.percent == null) {
            throw Refused.of("percent", "is missing", "tell its share in percent");
        }
        return new Blend.Share(fibres.require(row.fibre), row.percent);
    }

    private Map<Property, Figure> known(Map<Property, Figure> before) {
        Map<Property, Figure> known = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            Optional<Figure> was = Optional.ofNullable(before.get(property));
            ToldFigure.typed(property, typed(property, was), was).ifPresent(figure -> known.put(property, figure));
        }
        return known;
    }

    /** The number typed, or the very value before where it was left as it was shown, rounded or in other units. */
    private Optional<Double> typed(Property property, Optional<Figure> was) {
        return Optional.ofNullable(figures.get(property))
                .map(number -> isUntouched(property) ? was.map(Figure::value).orElse(number) : number);
    }

    boolean isUntouched(Property property) {
        return Objects.equals(figures.get(property), shown.get(property));
    }
}
