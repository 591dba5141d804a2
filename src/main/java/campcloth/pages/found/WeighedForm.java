package campcloth.pages.found;

import campcloth.cloth.WashedMarks;
import campcloth.cloth.WeighedPieces;
import campcloth.figure.Refused;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Pieces of known sides that were weighed. */
public class WeighedForm {

    public List<PieceForm> pieces = new ArrayList<>();
    public @Nullable Double scaleStepG;
    public @Nullable Double rulerStepMm;

    /** One piece. */
    public static class PieceForm {

        @TypedIn(Units.Measure.LENGTH_CM)
        public @Nullable Double lengthCm;

        @TypedIn(Units.Measure.LENGTH_CM)
        public @Nullable Double widthCm;

        public @Nullable Double massG;

        boolean isEmpty() {
            return Typed.nothing(lengthCm, widthCm, massG);
        }

        WeighedPieces.Piece piece() {
            return new WeighedPieces.Piece(
                    Typed.needed("lengthCm", lengthCm), Typed.needed("widthCm", widthCm), Typed.needed("massG", massG));
        }
    }

    boolean isEmpty() {
        return pieces.isEmpty();
    }

    WeighedPieces weighed() {
        List<WeighedPieces.Piece> weighed = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            weighed.add(Refused.within("pieces[" + i + "]", pieces.get(i)::piece));
        }
        return new WeighedPieces(
                weighed,
                Typed.needed("scaleStepG", scaleStepG),
                rulerStepMm == null ? WashedMarks.USUAL_RULER_STEP_MM : rulerStepMm);
    }
}
