package campcloth.layout;

import campcloth.layout.search.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Which place of the repeat each match group shall lie on: what was said, otherwise the best of a few in short searches: the
 * lines of symmetry, and those on which a piece begins at the cut edge or at a selvedge.
 */
final class MatchChoice {

    /** Part of the effort. */
    static final double SHARE = 0.25;

    private static final int MOST_TRIED = 6;
    private static final int MOST_TRIED_ACROSS = 3;
    /** With more copies nothing is tried, since even one layout takes its time. */
    private static final int MANY_COPIES = 60;

    private static final double LEAST_SECONDS = 0.002;

    private final Strip strip;
    private final List<Piece> pieces;
    private final List<Integer> lengths;
    private final double bound;
    private final List<String> groups;
    private double spentSeconds;

    MatchChoice(Strip strip, List<Piece> pieces, List<Integer> lengths, double bound) {
        this.strip = strip;
        this.pieces = pieces;
        this.lengths = lengths;
        this.bound = bound;
        this.groups = pieces.stream()
                .flatMap(piece -> piece.match().stream())
                .map(Match::group)
                .distinct()
                .toList();
    }

    boolean matches() {
        return strip.repeat().isPresent() && !groups.isEmpty();
    }

    List<MatchPhase> best(Effort effort, Watch watch) {
        Repeat repeat = strip.repeat().orElseThrow();
        List<MatchPhase> chosen = new ArrayList<>();
        for (String group : groups) {
            MatchPhase said = repeat.said(group);
            chosen.add(new MatchPhase(
                    group,
                    repeat.lengthCm().map(length -> said.alongCm().orElse(0.0)),
                    repeat.widthCm().map(width -> said.acrossCm().orElse(0.0))));
        }
        List<List<MatchPhase>> open = new ArrayList<>();
        for (String group : groups) {
            open.add(candidates(repeat, group));
        }
        long tries = open.stream().mapToInt(List::size).filter(size -> size > 1).sum();
        double seconds = Math.max(LEAST_SECONDS, effort.seconds() * SHARE / Math.max(1, tries));
        for (int i = 0; i < groups.size(); i++) {
            choose(chosen, i, open.get(i), seconds, effort, watch);
        }
        Nesting.refuseHomeless(laying(chosen).homeless(), pieces);
        return chosen;
    }

    private void choose(
            List<MatchPhase> chosen,
            int group,
            List<MatchPhase> candidates,
            double seconds,
            Effort effort,
            Watch watch) {
        double least = Double.POSITIVE_INFINITY;
        MatchPhase best = candidates.get(0);
        boolean found = false;
        for (MatchPhase candidate : candidates) {
            if (Double.isFinite(least) && watch.isStopped()) {
                break;
            }
            List<MatchPhase> tried = new ArrayList<>(chosen);
            tried.set(group, candidate);
            List<Piece> own = pieces.stream()
                    .filter(piece -> isIn(piece, candidate.group()))
                    .toList();
            boolean fits =
                    new Laying(strip, own, List.of(), tried, 0).homeless().isEmpty();
            double length = Double.POSITIVE_INFINITY;
            if (fits && candidates.size() > 1 && copies() <= MANY_COPIES && spentSeconds <= effort.seconds()) {
                List<Piece> others = laying(tried).homeless().isEmpty() ? pieces : own;
                Laying laying = new Laying(strip, others, lengths, tried, 0);
                length = laying.laid(seconds, effort.seed(), Nesting.quiet(watch))
                        .lengthCm();
                spentSeconds += laying.spentSeconds();
            }
            if (length < least - 1e-9 || fits && !found) {
                found = true;
                least = length;
                best = candidate;
            }
        }
        chosen.set(group, best);
    }

    private int copies() {
        return pieces.stream().mapToInt(Piece::count).sum();
    }

    private Laying laying(List<MatchPhase> phases) {
        return new Laying(strip, pieces, lengths, phases, bound);
    }

    private List<MatchPhase> candidates(Repeat repeat, String group) {
        MatchPhase said = repeat.said(group);
        List<Double> along = new ArrayList<>();
        List<Double> across = new ArrayList<>();
        for (Piece piece : pieces) {
            Optional<Point> spot = piece.matchWithin(false, false).filter(any -> isIn(piece, group));
            spot.ifPresent(at -> {
                double right =
                        strip.widthCm() - strip.sideCm() - piece.outline().widthCm();
                along.add(at.yCm() + strip.edgeGapCm() - repeat.fromCutCm());
                across.add(at.xCm() + strip.sideCm() - repeat.fromSelvedgeCm());
                across.add(at.xCm() + right - repeat.fromSelvedgeCm());
            });
        }
        List<MatchPhase> candidates = new ArrayList<>();
        for (Optional<Double> y : places(repeat.lengthCm(), said.alongCm(), along, MOST_TRIED)) {
            for (Optional<Double> x : places(repeat.widthCm(), said.acrossCm(), across, MOST_TRIED_ACROSS)) {
                candidates.add(new MatchPhase(group, y, x));
            }
        }
        return candidates;
    }

    private static List<Optional<Double>> places(
            Optional<Double> repeat, Optional<Double> said, List<Double> more, int most) {
        if (repeat.isEmpty() || said.isPresent()) {
            return List.of(repeat.flatMap(any -> said));
        }
        double step = repeat.get();
        TreeSet<Double> places = new TreeSet<>(List.of(0.0, step / 2));
        for (double place : more) {
            if (places.size() < most) {
                places.add(Math.rint((place - step * Math.floor(place / step)) * 1e6) / 1e6 % step);
            }
        }
        return places.stream().map(Optional::of).toList();
    }

    private static boolean isIn(Piece piece, String group) {
        return piece.match().filter(match -> match.group().equals(group)).isPresent();
    }
}
