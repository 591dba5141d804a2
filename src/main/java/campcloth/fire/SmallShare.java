package campcloth.fire;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.Layer;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Surface;
import campcloth.fibre.Blend;
import campcloth.fire.model.Spread;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Thread and trim: not cloths of their own but a small share of the garment's mass, {@value #THREAD_PERCENT} % and
 * {@value #TRIM_PERCENT} % (project choices: trim that melts wholly is more than the trace that a label may hide; a tunic of 400 g
 * takes about 2 to 4 g of thread, from memory). What is graded is the garment's cloth without the fibres in it that melt, which
 * it is graded by itself for, and with that share of the part. A trim that is raised, open or as light as gauze gives the whole a
 * raised face. Rules are held against the same.
 */
final class SmallShare {

    static final double THREAD_PERCENT = 1;
    static final double TRIM_PERCENT = 6;

    private SmallShare() {}

    static boolean isOne(Kind kind) {
        return kind == Kind.THREAD || kind == Kind.TRIM;
    }

    static double percent(Kind kind) {
        return kind == Kind.THREAD ? THREAD_PERCENT : TRIM_PERCENT;
    }

    /**
     * The garment's cloth with the part in it.
     *
     * @param part the part as a cloth of its own
     */
    static WornCloth in(WornCloth garment, Kind kind, WornCloth part, Layer layer) {
        boolean flashes =
                kind == Kind.TRIM && (part.canFlash() || part.isOpen() || part.weightGsm() < Spread.GAUZE_GSM);
        return new WornCloth(
                blend(garment.blend(), part.blend(), percent(kind)),
                garment.weight(),
                flashes ? Surface.RAISED : garment.surface(),
                flashes || garment.hasFilm() ? Finish.NONE : garment.finish(),
                garment.weave(),
                garment.fit(),
                layer,
                garment.treatment());
    }

    /** The part by itself, in the layer of the whole. */
    static WornCloth alone(Cloth cloth, WornCloth whole) {
        return WornCloth.of(WornOutfit.weighed(cloth), whole.fit(), whole.layer());
    }

    private static Blend blend(Blend garment, Blend part, double percent) {
        List<Blend.Share> firm = garment.shares().stream()
                .filter(share -> !share.fibre().family().countsAsMeltable())
                .toList();
        List<Blend.Share> rest = firm.isEmpty() ? garment.shares() : firm;
        double sum = rest.stream().mapToDouble(Blend.Share::percent).sum();
        Map<String, Blend.Share> mixed = new TreeMap<>();
        rest.forEach(share -> add(mixed, share, (100 - percent) / sum));
        part.shares().forEach(share -> add(mixed, share, percent / 100));
        return new Blend(List.copyOf(mixed.values()));
    }

    private static void add(Map<String, Blend.Share> mixed, Blend.Share share, double factor) {
        mixed.merge(
                share.fibre().key(),
                new Blend.Share(share.fibre(), Math.min(100, share.percent() * factor)),
                (a, b) -> new Blend.Share(a.fibre(), Math.min(100, a.percent() + b.percent())));
    }
}
