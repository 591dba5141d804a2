package campcloth.rest;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.layout.AtHand;
import campcloth.layout.Effort;
import campcloth.layout.Layout;
import campcloth.layout.Match;
import campcloth.layout.MatchPhase;
import campcloth.layout.Nesting;
import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Point;
import campcloth.layout.Progress;
import campcloth.layout.Repeat;
import campcloth.layout.Strip;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Free outlines to lay out on a width of cloth. */
record LayoutRequest(
        @Schema(example = "140", description = "usable width, selvedges left out") @NotNull
        Double widthCm,

        @Schema(description = "at most 200 copies in all") @NotEmpty @Size(max = Piece.MOST_COPIES)
        List<@NotNull @Valid PieceBody> pieces,

        @Schema(
                example = "1.0",
                description = "time to search, about, 0.01 to 30, for a job to 120; 1 where it is left out")
        @Nullable
        Double seconds,

        @Schema(description = "free distance between any two pieces; 0 where it is left out") @Nullable
        Double gapCm,

        @Schema(
                description =
                        "start of the random choices; the same seed gives the same layout; 1 where it is left out")
        @Nullable
        Long seed,

        @Schema(
                description =
                        "width in cm of each selvedge within widthCm, on which nothing lies; 0 where it is left out")
        @Nullable
        Double selvedgeCm,

        @Schema(description = "free distance in cm from the cut ends and from the selvedges; 0 where it is left out")
        @Nullable
        Double edgeGapCm,

        @Schema(description = "repeat of the pattern along the cloth in cm, 0.5 to 1000; none where it is left out")
        @Nullable
        Double repeatLengthCm,

        @Schema(description = "repeat of the pattern across the cloth in cm, 0.5 to 1000; none where it is left out")
        @Nullable
        Double repeatWidthCm,

        @Schema(
                description = "where a repeat begins along, in cm from the cut edge; with sameUpsideDown a line about"
                        + " which the pattern looks the same; 0 where it is left out")
        @Nullable
        Double repeatFromCutCm,

        @Schema(
                description = "where a repeat begins across, in cm from the left edge; with sameMirrored a line about"
                        + " which the pattern looks the same; 0 where it is left out")
        @Nullable
        Double repeatFromSelvedgeCm,

        @Schema(
                description = "the pattern looks the same upside down; otherwise no piece is turned where a pattern"
                        + " repeats along; false where it is left out")
        @Nullable
        Boolean sameUpsideDown,

        @Schema(
                description = "the pattern looks the same mirrored from left to right; otherwise no piece is mirrored,"
                        + " nor turned, where it repeats across; false where it is left out")
        @Nullable
        Boolean sameMirrored,

        @Schema(
                description = "places of the repeat on which match groups shall lie; what is left out is chosen; a"
                        + " matched piece is turned or mirrored only on a line of symmetry")
        @Nullable
        @Size(max = Piece.MOST_COPIES)
        List<@NotNull @Valid MatchPhaseBody> matchPhases,

        @Schema(
                description = "lengths of the same cloth that are at hand, at most 20: used first, so that least is"
                        + " bought, then as few as possible are begun")
        @Nullable
        @Size(max = AtHand.MOST)
        List<@NotNull @Valid AtHandBody> lengthsAtHand) {

    private static final double USUAL_SECONDS = 1;
    private static final int COORDINATES = 2;

    /** An outline, as often as it is wanted. */
    @Schema(name = "PieceToLay")
    record PieceBody(
            @Schema(example = "front") @NotNull String name,

            @Schema(
                    description =
                            "corners as [x, y] in the order in which one walks round the piece, either way; x across"
                                    + " the cloth, y along it; at most 10000",
                    example = "[[0,0],[70,0],[70,95],[0,95]]")
            @NotNull
            List<@Nullable List<@Nullable Double>> outlineCm,

            @Schema(description = "1 where it is left out") @Nullable
            Integer count,

            @Schema(description = "may turn by 180 degrees, as on cloth without nap; false where it is left out")
            @Nullable
            Boolean turnable,

            @Schema(description = "may be mirrored across its lengthwise axis; false where it is left out") @Nullable
            Boolean mirrorable,

            @Schema(
                    description = "spot of the outline in cm, [x, y] in its coordinates, that meets the same place of"
                            + " the pattern as those of its group; none where it is left out",
                    example = "[0, 20]")
            @Nullable
            List<@Nullable Double> matchAtCm,

            @Schema(description = "pieces of one group match; one group of all where it is left out") @Nullable
            String matchGroup) {

        private Piece piece() {
            return new Piece(
                    name,
                    Outline.of(points()),
                    count == null ? 1 : count,
                    Boolean.TRUE.equals(turnable),
                    Boolean.TRUE.equals(mirrorable),
                    false,
                    match());
        }

        private Optional<Match> match() {
            if (matchAtCm == null) {
                return Optional.empty();
            }
            return Optional.of(new Match(point(matchAtCm, "matchAtCm"), matchGroup == null ? Match.USUAL : matchGroup));
        }

        private List<Point> points() {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < outlineCm.size(); i++) {
                points.add(point(outlineCm.get(i), "outlineCm[" + i + "]"));
            }
            return points;
        }

        private static Point point(@Nullable List<@Nullable Double> corner, String field) {
            Double x = corner == null || corner.size() != COORDINATES ? null : corner.get(0);
            Double y = x == null || corner == null ? null : corner.get(1);
            if (x == null || y == null) {
                throw Refused.of(field, "is not a corner", "give two numbers, [x, y], in cm");
            }
            return new Point(x, y);
        }
    }

    /** A length of cloth that is at hand. */
    @Schema(name = "LengthAtHand")
    record AtHandBody(
            @Schema(description = "its length in cm, at least 1") @NotNull
            Double lengthCm,

            @Schema(description = "its width in cm, measured from the same edge; the cloth's where it is left out")
            @Nullable
            Double widthCm,

            @Schema(
                    description =
                            "where a repeat begins along it, in cm from its cut edge; the cloth's where it is left"
                                    + " out")
            @Nullable
            Double repeatFromCutCm) {

        private AtHand atHand() {
            return new AtHand(lengthCm, Optional.ofNullable(widthCm), Optional.ofNullable(repeatFromCutCm));
        }
    }

    Strip strip() {
        List<AtHand> lengths = new ArrayList<>();
        List<AtHandBody> given = lengthsAtHand == null ? List.of() : lengthsAtHand;
        for (int i = 0; i < given.size(); i++) {
            lengths.add(Refused.within("lengthsAtHand[" + i + "]", given.get(i)::atHand));
        }
        return new Strip(widthCm, orNone(gapCm), orNone(selvedgeCm), orNone(edgeGapCm), repeat(), lengths);
    }

    private Optional<Repeat> repeat() {
        boolean named = repeatFromCutCm != null || repeatFromSelvedgeCm != null || matchPhases != null;
        if (repeatLengthCm == null && repeatWidthCm == null && !named) {
            return Optional.empty();
        }
        List<MatchPhaseBody> phases = matchPhases == null ? List.of() : matchPhases;
        List<MatchPhase> wanted = new ArrayList<>();
        for (int i = 0; i < phases.size(); i++) {
            wanted.add(Refused.within("matchPhases[" + i + "]", phases.get(i)::phase));
        }
        return Optional.of(new Repeat(
                Optional.ofNullable(repeatLengthCm),
                Optional.ofNullable(repeatWidthCm),
                orNone(repeatFromCutCm),
                orNone(repeatFromSelvedgeCm),
                Boolean.TRUE.equals(sameUpsideDown),
                Boolean.TRUE.equals(sameMirrored),
                wanted));
    }

    private static double orNone(@Nullable Double cm) {
        return cm == null ? 0 : cm;
    }

    /** The layout asked for; refused, naming the field, before anything is searched. */
    Layout laidOut(Progress progress) {
        Effort effort = Effort.waitedFor(wantedSeconds(), wantedSeed());
        return Nesting.layout(strip(), toLay(), effort, progress);
    }

    /** Refuses, naming the field, what a job could not lay out. */
    void checkForJob() {
        jobEffort();
        Nesting.check(strip(), toLay());
    }

    /** The layout, by somebody who takes the time that a job has. */
    Layout laidOutByJob(Progress progress) {
        return Nesting.layout(strip(), toLay(), jobEffort(), progress);
    }

    private Effort jobEffort() {
        return new Effort(wantedSeconds(), wantedSeed());
    }

    double wantedSeconds() {
        return seconds == null ? USUAL_SECONDS : seconds;
    }

    private long wantedSeed() {
        return seed == null ? 1 : seed;
    }

    List<Piece> toLay() {
        List<Piece> read = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            PieceBody piece = pieces.get(i);
            if (piece.matchAtCm() != null && repeatLengthCm == null && repeatWidthCm == null) {
                throw Refused.of(
                        "pieces[" + i + "].matchAtCm",
                        Words.quoted(piece.name()) + ": there is no pattern to match",
                        "give repeatLengthCm or repeatWidthCm, or leave the match point out");
            }
            read.add(Refused.within("pieces[" + i + "]", () -> Refused.named(piece.name(), piece::piece)));
        }
        return read;
    }
}
