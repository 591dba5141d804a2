package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.List;

/**
 * How much of a cloth's fibre ends prickle next to the skin.
 *
 * <p>Prickle is mechanical: coarse ends that stand out and do not bend fire nerve endings (Garnsworthy and others,
 * Neurophysiology 59, 1988, 1083-1097). Cloth in which more than about 5 % of the ends are coarser than 30 um is felt by most
 * people. The percentage here is the mean over the blend's fibres, weighted by their number of ends ({@link FibreEnds}), times
 * a factor for the finish (project choice): shaving or pressing ends down lowers it, fulling and brushing raise it. Filament
 * has no ends; where it makes up 30 % or more it also keeps others from the face. Cloth all of filament: 0.
 *
 * <p>The interval carries those of diameter and variation; the numbers of ends are taken at whichever end is worse. A cloth
 * under which a shirt or lining is worn does not prickle at all: that is for whoever knows the garment.
 *
 * @param coarseEndsPercent "% fibres over 30 um", or over the diameter of equal stiffness
 * @param bastRoughness scratch of flax, hemp, jute and the like, 0 to 1; see {@link BastRoughness}
 */
public record Prickle(Figure coarseEndsPercent, double bastRoughness) {

    static final String SOURCE = "estimate-prickle";

    private static final double MORE_ENDS = 1.2;
    private static final double FILAMENT_SOOTHES_FROM = 0.3;

    /** The prickle of a cloth completed by {@link Estimates}; the basis is that of the weakest diameter used. */
    public static Prickle of(Cloth completed) {
        List<Blend.Share> spun = completed.blend().shares().stream()
                .filter(share -> !Filament.presumed(share.fibre(), completed.weave()))
                .toList();
        Span coarse = meanCoarseShare(spun.stream()
                        .map(share -> FibreEnds.of(completed, share))
                        .toList())
                .times(100 * endsLeft(completed))
                .clampedTo(0, 100);
        Figure diameter = weakest(completed, spun);
        String source = diameter.basis() == Basis.ESTIMATED ? SOURCE : diameter.source();
        return new Prickle(
                new Figure(coarse.mid(), coarse.low(), coarse.high(), diameter.basis(), source),
                BastRoughness.of(completed));
    }

    /** Mean of the coarse shares with the numbers of ends as weights; 0 where there are no ends. */
    static Span meanCoarseShare(List<FibreEnds> fibres) {
        double ends = fibres.stream().mapToDouble(f -> f.number().mid()).sum();
        if (ends == 0) {
            return Span.exactly(0);
        }
        double coarse = fibres.stream()
                .mapToDouble(f -> f.number().mid() * f.coarseShare().mid())
                .sum();
        double mid = coarse / ends;
        return new Span(Math.min(mid, -greatestMean(fibres, false)), mid, Math.max(mid, greatestMean(fibres, true)));
    }

    /**
     * The greatest mean that numbers of ends within their spans allow (of the negated shares, where the least is wanted): fibres
     * above a threshold stand at their greatest number, the others at their least; every threshold is tried.
     */
    private static double greatestMean(List<FibreEnds> fibres, boolean upper) {
        double best = Double.NEGATIVE_INFINITY;
        for (FibreEnds threshold : fibres) {
            double ends = 0;
            double sum = 0;
            for (FibreEnds fibre : fibres) {
                boolean many = bound(fibre, upper) >= bound(threshold, upper);
                double number = many ? fibre.number().high() : fibre.number().low();
                ends += number;
                sum += number * bound(fibre, upper);
            }
            best = Math.max(best, sum / ends);
        }
        return best;
    }

    private static double bound(FibreEnds fibre, boolean upper) {
        return upper ? fibre.coarseShare().high() : -fibre.coarseShare().low();
    }

    /** What the finish and filament leave of the ends, against plain spun cloth; project choice. */
    private static double endsLeft(Cloth cloth) {
        double left = switch (cloth.finish()) {
            case MERCERISED -> 0.6;
            case CALENDERED, WAXED -> 0.8;
            case COATED -> 0.5;
            case FULLED, BRUSHED -> MORE_ENDS;
            case NONE, WASHED, PRESHRUNK -> cloth.surface() == Surface.RAISED ? MORE_ENDS : 1;
        };
        return Filament.share(cloth) >= FILAMENT_SOOTHES_FROM ? 0.8 * left : left;
    }

    private static Figure weakest(Cloth cloth, List<Blend.Share> spun) {
        Fibre leading = Fineness.leading(cloth.blend());
        Figure weakest = Fineness.diameterUm(cloth, leading);
        for (Blend.Share share : spun) {
            Figure diameter = Fineness.diameterUm(cloth, share.fibre());
            weakest = weakest.basis().beats(diameter.basis()) ? diameter : weakest;
        }
        return weakest;
    }
}
