package campcloth.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Random cloths with patterns, edges and lengths at hand, and a few pieces for them. */
final class RandomCases {

    private final RandomPieces random;

    RandomCases(long seed) {
        random = new RandomPieces(seed);
    }

    private boolean oneIn(int some) {
        return random.random().nextInt(some) == 0;
    }

    Strip strip() {
        double width = random.between(60, 160);
        List<AtHand> lengths = new ArrayList<>();
        for (int i = random.random().nextInt(3); i > 0; i--) {
            Optional<Double> own = oneIn(2) ? Optional.of(random.between(20, width)) : Optional.empty();
            Optional<Double> begins = oneIn(2) ? Optional.of(random.between(0, 10)) : Optional.empty();
            lengths.add(new AtHand(random.between(10, 200), own, begins));
        }
        return new Strip(
                width,
                oneIn(3) ? random.between(0, 1) : 0,
                oneIn(3) ? random.between(0, 2) : 0,
                oneIn(3) ? random.between(0, 2) : 0,
                oneIn(4) ? Optional.empty() : Optional.of(repeat()),
                lengths);
    }

    private Repeat repeat() {
        Optional<Double> length = Optional.of(random.between(1, 30));
        Optional<Double> width = oneIn(2) ? Optional.of(random.between(1, 12)) : Optional.empty();
        List<MatchPhase> phases = oneIn(3)
                ? List.of(new MatchPhase("one", Optional.of(random.between(0, 10)), Optional.empty()))
                : List.of();
        return new Repeat(length, width, random.between(0, 10), random.between(0, 10), oneIn(2), oneIn(2), phases);
    }

    List<Piece> pieces(Strip strip) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1 + random.random().nextInt(4); i > 0; i--) {
            Outline outline = random.outline(0.7 * strip.usableWidthCm());
            Point corner = outline.points()
                    .get(random.random().nextInt(outline.points().size()));
            Optional<Match> match =
                    oneIn(3) ? Optional.empty() : Optional.of(new Match(corner, oneIn(3) ? "two" : "one"));
            pieces.add(new Piece(
                    "piece " + i, outline, 1 + random.random().nextInt(2), oneIn(2), oneIn(4), oneIn(3), match));
        }
        return pieces;
    }
}
