package campcloth.fire;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Words;

/**
 * One thing that a wearer can do otherwise. It changes the cloth, how it is worn or the place at the fire, never a rule.
 *
 * <p>The order of the kinds is that of the effort: stepping back costs nothing, another blend is another cloth (project choice).
 */
public sealed interface Change
        permits OtherPlace.KeepDistance,
                OtherPlace.StayOutOfReach,
                Change.OtherLayer,
                Change.CloseFit,
                Change.NoFilm,
                Change.PlainSurface,
                Change.Heavier,
                OtherBlend,
                OtherPart {

    /** What is changed, from the least effort to the greatest. */
    enum Kind {
        KEEP_DISTANCE,
        OTHER_LAYER,
        OTHER_PART,
        CLOSE_FIT,
        STAY_OUT_OF_REACH,
        NO_FILM,
        PLAIN_SURFACE,
        HEAVIER,
        OTHER_BLEND
    }

    Kind kind();

    /** What it is changed to, in short: {@code 3.1 m}. */
    String to();

    /** What to do, as a plain sentence. */
    String todo(FireCase before);

    FireCase in(FireCase before);

    /** Wears it outermost, with another layer on the skin. */
    record OtherLayer() implements Change {

        @Override
        public Kind kind() {
            return Kind.OTHER_LAYER;
        }

        @Override
        public String to() {
            return Layer.OUTER.name();
        }

        @Override
        public String todo(FireCase before) {
            return before.cloth().layer() == Layer.SKIN
                    ? "Do not wear it on the skin but outermost, over wool, linen or cotton. That layer is judged by itself."
                    : "Wear it outermost, with nothing over it.";
        }

        @Override
        public FireCase in(FireCase before) {
            return before.withLayer(Layer.OUTER);
        }
    }

    /**
     * The same cloth, heavier, or known to be as heavy as it is given.
     *
     * @param gsm mass of the piece, g/m2
     */
    record Heavier(double gsm) implements Change {

        @Override
        public Kind kind() {
            return Kind.HEAVIER;
        }

        @Override
        public String to() {
            return Words.number(gsm) + " g/m2";
        }

        @Override
        public String todo(FireCase before) {
            double given = before.cloth().weight().givenGsm();
            return given >= gsm
                    ? "Weigh it: a piece that weighs " + to() + " or more is judged by that."
                    : "Take it at " + to() + " or heavier; it is given as " + Words.number(given) + " g/m2.";
        }

        @Override
        public FireCase in(FireCase before) {
            return before.withWeight(gsm);
        }
    }

    /** A garment that lies close to the body. */
    record CloseFit() implements Change {

        @Override
        public Kind kind() {
            return Kind.CLOSE_FIT;
        }

        @Override
        public String to() {
            return Fit.CLOSE.name();
        }

        @Override
        public String todo(FireCase before) {
            return "Cut it close to the body, sleeves and hems too.";
        }

        @Override
        public FireCase in(FireCase before) {
            return before.withFit(Fit.CLOSE);
        }
    }

    /** The same fibres, closely woven with a plain face. */
    record PlainSurface() implements Change {

        @Override
        public Kind kind() {
            return Kind.PLAIN_SURFACE;
        }

        @Override
        public String to() {
            return Surface.PLAIN.name();
        }

        @Override
        public String todo(FireCase before) {
            return before.cloth().isRaised()
                    ? "Take the same fibres with a plain face, closely woven: not raised, brushed or piled."
                    : "Take the same fibres closely woven.";
        }

        @Override
        public FireCase in(FireCase before) {
            WornCloth cloth = before.cloth();
            Finish finish = cloth.finish() == Finish.BRUSHED ? Finish.NONE : cloth.finish();
            Weave weave = switch (cloth.weave()) {
                case OPEN_PLAIN, PILE, FLEECE, FUR -> Weave.PLAIN;
                default -> cloth.weave();
            };
            return before.withMake(Surface.PLAIN, finish, weave);
        }
    }

    /** The same cloth without film or wax on it. */
    record NoFilm() implements Change {

        @Override
        public Kind kind() {
            return Kind.NO_FILM;
        }

        @Override
        public String to() {
            return Finish.NONE.name();
        }

        @Override
        public String todo(FireCase before) {
            return "Take it without film or wax: not " + before.cloth().finish().words() + ".";
        }

        @Override
        public FireCase in(FireCase before) {
            WornCloth cloth = before.cloth();
            return before.withMake(cloth.surface(), Finish.NONE, cloth.weave());
        }
    }
}
