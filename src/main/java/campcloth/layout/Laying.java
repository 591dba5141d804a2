package campcloth.layout;

import campcloth.layout.search.Held;
import campcloth.layout.search.Ring;
import campcloth.layout.search.StripPacking;
import campcloth.layout.search.Watch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One way to lay pieces: on the bolt and some of the lengths at hand, with each match group on its place of the repeat, or
 * with none matched.
 */
final class Laying {

    private record Lie(boolean turned, boolean mirrored, Held held) {}

    private record Copy(Piece piece, int number, List<Lie> lies) {}

    private final Strip strip;
    private final List<Piece> pieces;
    private final List<MatchPhase> phases;
    private final Bands bands;
    private final double bound;
    private final List<Copy> copies = new ArrayList<>();
    private double spentSeconds;

    Laying(Strip strip, List<Piece> pieces, List<Integer> lengths, List<MatchPhase> phases, double bound) {
        this.strip = strip;
        this.pieces = pieces;
        this.phases = phases;
        this.bands = new Bands(strip, lengths);
        this.bound = bound;
        Map<String, Integer> numbers = new HashMap<>();
        for (Piece piece : pieces) {
            for (int copy = 1; copy <= piece.count(); copy++) {
                int number = numbers.merge(piece.name(), 1, Integer::sum);
                copies.add(new Copy(piece, number, lies(piece, copy)));
            }
        }
    }

    /** The first piece of which a copy can lie nowhere, with its match point where it must be. */
    Optional<Piece> homeless() {
        return copies.stream()
                .filter(copy -> copy.lies.isEmpty())
                .map(Copy::piece)
                .findFirst();
    }

    Layout laid(double seconds, long seed, Watch watch) {
        double least = Math.max(0, bound - 2 * strip.edgeGapCm());
        boolean free = bands.ground().fixed().isEmpty() && phases.isEmpty();
        List<StripPacking.Spot> spots;
        if (free) {
            spots = StripPacking.spots(
                    strip.usableWidthCm(), strip.gapCm(), least, items(), seconds, seed, onCloth(watch));
            spentSeconds = seconds;
        } else {
            StripPacking.Packed packed =
                    StripPacking.heldSpots(bands.ground(), least, items(), seconds, seed, onCloth(watch));
            spots = packed.spots();
            spentSeconds = packed.seconds();
        }
        Layout layout = layoutOf(placements(spots));
        return Verification.faults(layout).isEmpty() ? layout : layoutOf(stacked());
    }

    /** What the layout took of the effort; more than it was given where not even one was done by then. */
    double spentSeconds() {
        return spentSeconds;
    }

    private Watch onCloth(Watch watch) {
        return new Watch() {
            @Override
            public void better(double length) {
                watch.better(length > 0 ? length + 2 * strip.edgeGapCm() : 0);
            }

            @Override
            public boolean isStopped() {
                return watch.isStopped();
            }
        };
    }

    /** The ways in which a copy, counted from 1 within its piece, may lie. */
    private List<Lie> lies(Piece piece, int copy) {
        List<Lie> lies = new ArrayList<>();
        for (boolean mirrored : new boolean[] {false, true}) {
            for (boolean turned : new boolean[] {false, true}) {
                if (piece.allows(copy, turned, mirrored, strip.repeat(), phaseOf(piece))) {
                    Held held = held(piece, turned, mirrored);
                    if (held.fitsAcross(strip.usableWidthCm() - piece.outline().widthCm())) {
                        lies.add(new Lie(turned, mirrored, held));
                    }
                }
            }
        }
        return lies;
    }

    private Optional<MatchPhase> phaseOf(Piece piece) {
        return piece.match()
                .flatMap(match -> phases.stream()
                        .filter(phase -> phase.group().equals(match.group()))
                        .findFirst());
    }

    private Held held(Piece piece, boolean turned, boolean mirrored) {
        Optional<MatchPhase> phase = phaseOf(piece);
        Optional<Point> spot = piece.matchWithin(turned, mirrored);
        if (strip.repeat().isEmpty() || phase.isEmpty() || spot.isEmpty()) {
            return Held.FREE;
        }
        double stepX = strip.repeat().get().widthCm().orElse(0.0);
        double stepY = strip.repeat().get().lengthCm().orElse(0.0);
        double acrossCm =
                bands.offsetOf(phase.get().acrossCm().orElse(0.0)) - spot.get().xCm();
        double alongCm =
                bands.heightOf(phase.get().alongCm().orElse(0.0)) - spot.get().yCm();
        return new Held(stepX, within(acrossCm, stepX), stepY, within(alongCm, stepY));
    }

    private static double within(double phase, double step) {
        return step == 0 ? 0 : phase - step * Math.floor(phase / step);
    }

    private List<StripPacking.Item> items() {
        Map<List<Object>, StripPacking.Item> made = new HashMap<>();
        return copies.stream()
                .map(copy -> made.computeIfAbsent(
                        List.of(copy.piece.outline(), copy.lies),
                        key -> new StripPacking.Item(
                                copy.lies.stream()
                                        .map(lie -> ring(copy.piece.outline().lying(lie.turned, lie.mirrored, 0, 0)))
                                        .toList(),
                                copy.lies.stream().map(Lie::held).toList())))
                .toList();
    }

    private static Ring ring(Outline outline) {
        return Ring.of(
                outline.points().stream().mapToDouble(Point::xCm).toArray(),
                outline.points().stream().mapToDouble(Point::yCm).toArray());
    }

    private List<Placement> placements(List<StripPacking.Spot> spots) {
        List<Placement> placements = new ArrayList<>();
        for (int i = 0; i < copies.size(); i++) {
            StripPacking.Spot spot = spots.get(i);
            placements.add(placed(copies.get(i), copies.get(i).lies.get(spot.way()), spot.x(), spot.y()));
        }
        return placements;
    }

    private Placement placed(Copy copy, Lie lie, double x, double y) {
        return bands.placed(copy.piece.name(), copy.number, x, y, lie.turned, lie.mirrored);
    }

    /** Every copy above the one before, on the bolt. */
    private List<Placement> stacked() {
        List<Placement> placements = new ArrayList<>();
        double low = bands.bolt();
        for (Copy copy : copies) {
            Lie lie = copy.lies.get(0);
            double y = lie.held.firstAlong(low);
            placements.add(placed(copy, lie, lie.held.firstAcross(), y));
            low = y + copy.piece.outline().heightCm() + strip.gapCm();
        }
        return placements;
    }

    private Layout layoutOf(List<Placement> placements) {
        Layout bare = new Layout(strip, pieces, 0, bound, 0, placements);
        double length = placements.stream()
                .filter(placed -> placed.atHand().isEmpty())
                .mapToDouble(p -> p.yCm() + bare.pieceOf(p).outline().heightCm() + strip.edgeGapCm())
                .max()
                .orElse(0);
        double used = UsedCloth.percent(strip, pieces, length, placements);
        return new Layout(strip, pieces, length, bound, used, placements, phases, Optional.empty());
    }
}
