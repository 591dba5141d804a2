package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One thing in which two cloths can be alike, and how far apart they are in it. Without unit; 1 is about as much as another
 * weight by a factor of two. Every scale is a project choice, made so that fibre and weight count most. Each distance is 0 for
 * the same, the same both ways round, and speaks of what is known only: a written figure of basis ESTIMATED is not.
 */
public enum Trait {
    /**
     * Share of the mass that would have to be exchanged to make one blend of the other: by fibre, by kind of fibre (cotton, bast,
     * hair and so on) and by family in heat, 0 to 1 each. From flax to hemp 0.5, from flax to cotton 1, to wool 2.
     */
    FIBRES("fibres") {
        @Override
        double between(Cloth one, Cloth other) {
            Blend a = one.blend();
            Blend b = other.blend();
            if (a.equals(b)) {
                return 0;
            }
            return 0.5 * exchanged(a, b, Fibre::key)
                    + 0.5 * exchanged(a, b, FibreKind::of)
                    + exchanged(a, b, Fibre::family);
        }

        @Override
        String words(Cloth cloth) {
            return cloth.blend().words();
        }
    },
    /** Mass per area: 1 for each doubling, at most 2. */
    WEIGHT("weight") {
        @Override
        double between(Cloth one, Cloth other) {
            return weight(number(one, Property.WEIGHT_GSM), number(other, Property.WEIGHT_GSM));
        }

        @Override
        String words(Cloth cloth) {
            return figure(cloth, Property.WEIGHT_GSM);
        }
    },
    /** How it is bound: see {@link #bound}. */
    WEAVE("weave") {
        @Override
        double between(Cloth one, Cloth other) {
            return bound(one.weave(), other.weave());
        }

        @Override
        String words(Cloth cloth) {
            return cloth.weave().words();
        }
    },
    /** Raised or not: 0.3. */
    SURFACE("surface") {
        @Override
        double between(Cloth one, Cloth other) {
            return one.surface() == other.surface() ? 0 : 0.3;
        }

        @Override
        String words(Cloth cloth) {
            return cloth.surface() == Surface.RAISED ? "raised face" : "plain face";
        }
    },
    /** Another finish 0.2; where it closes the pores, or fulls the cloth, in one of them alone 0.6. */
    FINISH("finish") {
        @Override
        double between(Cloth one, Cloth other) {
            Finish a = one.finish();
            Finish b = other.finish();
            if (a == b) {
                return 0;
            }
            boolean changesMuch = a.closesPores() != b.closesPores() || (a == Finish.FULLED) != (b == Finish.FULLED);
            return changesMuch ? 0.6 : 0.2;
        }

        @Override
        String words(Cloth cloth) {
            return cloth.finish().words();
        }
    },
    /** Stretch in one of them alone: 0.4. */
    STRETCH("stretch") {
        @Override
        double between(Cloth one, Cloth other) {
            return one.stretch() == other.stretch() ? 0 : 0.4;
        }

        @Override
        String words(Cloth cloth) {
            return cloth.stretch() ? "stretches" : "does not stretch";
        }
    },
    /** Thickness: 0.5 for each doubling, at most 1. */
    THICKNESS("thickness") {
        @Override
        double between(Cloth one, Cloth other) {
            return thickness(number(one, Property.THICKNESS_MM), number(other, Property.THICKNESS_MM));
        }

        @Override
        String words(Cloth cloth) {
            return figure(cloth, Property.THICKNESS_MM);
        }
    };

    /** A figure that only one of two cloths has: a quarter of a doubling, so that not knowing is no likeness. */
    private static final double ONE_UNKNOWN_DOUBLINGS = 0.25;

    private static final double MOST_DOUBLINGS = 2;

    private static final double ROUNDING = 1e-9;

    private final String words;

    Trait(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** How far apart two cloths are in it, 0 to 2. */
    abstract double between(Cloth one, Cloth other);

    /** Whether it is known of a cloth. */
    boolean isKnown(Cloth cloth) {
        return switch (this) {
            case WEIGHT -> known(cloth, Property.WEIGHT_GSM).isPresent();
            case THICKNESS -> known(cloth, Property.THICKNESS_MM).isPresent();
            case FIBRES, WEAVE, SURFACE, FINISH, STRETCH -> true;
        };
    }

    /** How a cloth is in it. */
    abstract String words(Cloth cloth);

    /** The figure where somebody measured, declared or published it; not where it is an estimate. */
    static Optional<Figure> known(Cloth cloth, Property property) {
        return cloth.figure(property).filter(figure -> figure.basis() != Basis.ESTIMATED);
    }

    /**
     * 0 the same; 0.2 a step along open plain, plain and tight plain; 0.3 among other flat weaves, 0.5 among piles and among
     * knits; 1 otherwise.
     */
    private static double bound(Weave a, Weave b) {
        if (a == b) {
            return 0;
        }
        if (a.compareTo(Weave.TIGHT_PLAIN) <= 0 && b.compareTo(Weave.TIGHT_PLAIN) <= 0) {
            return 0.2 * Math.abs(a.ordinal() - b.ordinal());
        }
        if (a.compareTo(Weave.SATIN) <= 0 && b.compareTo(Weave.SATIN) <= 0) {
            return 0.3;
        }
        return (a.isPile() && b.isPile()) || (a.isKnit() && b.isKnit()) ? 0.5 : 1;
    }

    /** Share of the mass, 0 to 1, that lies in other groups; a sum over each group of either blend, once. */
    private static double exchanged(Blend a, Blend b, Function<Fibre, Object> group) {
        double exchanged = (surplus(a, b, group) + surplus(b, a, group)) / 200;
        return exchanged < ROUNDING ? 0 : exchanged;
    }

    /** What one blend has more than the other, over its groups, percent. */
    private static double surplus(Blend a, Blend b, Function<Fibre, Object> group) {
        double surplus = 0;
        for (int i = 0; i < a.shares().size(); i++) {
            Object here = group.apply(a.shares().get(i).fibre());
            if (isFirst(a, i, here, group)) {
                surplus += Math.max(0, percent(a, here, group) - percent(b, here, group));
            }
        }
        return surplus;
    }

    private static boolean isFirst(Blend blend, int place, Object here, Function<Fibre, Object> group) {
        for (int i = 0; i < place; i++) {
            if (group.apply(blend.shares().get(i).fibre()).equals(here)) {
                return false;
            }
        }
        return true;
    }

    private static double percent(Blend blend, Object here, Function<Fibre, Object> group) {
        double percent = 0;
        for (Blend.Share share : blend.shares()) {
            if (Objects.equals(group.apply(share.fibre()), here)) {
                percent += share.percent();
            }
        }
        return percent;
    }

    /** The distance of two cloths of these weights alone, g/m2. */
    static double weight(OptionalDouble one, OptionalDouble other) {
        return doublings(one, other, 1);
    }

    /** The distance of two cloths of these thicknesses alone, mm. */
    static double thickness(OptionalDouble one, OptionalDouble other) {
        return doublings(one, other, 0.5);
    }

    /** The number of what is {@link #known}. */
    static OptionalDouble number(Cloth cloth, Property property) {
        Optional<Figure> known = known(cloth, property);
        return known.isPresent() ? OptionalDouble.of(known.get().value()) : OptionalDouble.empty();
    }

    private static double doublings(OptionalDouble a, OptionalDouble b, double each) {
        if (a.isEmpty() && b.isEmpty()) {
            return 0;
        }
        if (a.isEmpty() || b.isEmpty()) {
            return each * ONE_UNKNOWN_DOUBLINGS;
        }
        double apart = Math.abs(Math.log(a.getAsDouble()) - Math.log(b.getAsDouble())) / Math.log(2);
        return each * Math.min(MOST_DOUBLINGS, apart);
    }

    private static String figure(Cloth cloth, Property property) {
        return known(cloth, property)
                .map(figure -> Words.number(figure.value()) + " " + property.unit())
                .orElse("not known");
    }
}
