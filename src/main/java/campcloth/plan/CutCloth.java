package campcloth.plan;

/**
 * What a plan remembers of the cloth it was made for.
 *
 * @param name how people call it, may be empty
 * @param widthCm from selvedge to selvedge as bought, selvedges included
 * @param selvedgeCm width of each selvedge
 * @param nap whether all pieces lie the same way up
 * @param washing whether it is washed before it is cut
 */
public record CutCloth(String name, double widthCm, double selvedgeCm, boolean nap, Washing washing) {

    /** Whether cloth is washed before it is cut. */
    public enum Washing {
        BEFORE_CUTTING("Chalk on the washed and pressed cloth: all measures are those after the wash."),
        NOT_YET("Cut unwashed: the pieces are larger by what the wash will take."),
        NEVER("Never washed: all measures are those of the cloth as bought.");

        private final String words;

        Washing(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    static CutCloth of(ClothToCut cloth) {
        Washing washing =
                cloth.isNeverWashed() ? Washing.NEVER : cloth.prewash() ? Washing.BEFORE_CUTTING : Washing.NOT_YET;
        return new CutCloth(cloth.name(), cloth.widthCm(), cloth.selvedgeCm(), cloth.nap(), washing);
    }
}
