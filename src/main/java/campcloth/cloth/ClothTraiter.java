package campcloth.cloth;

/** Computes the traits that a catalogue is sorted by. */
public interface ClothTraiter {

    /** The traits of a cloth as known; gaps are estimated. */
    ClothTraits of(Cloth cloth);

    /** Names the rules and the reference data that it computes by: where the name is another one, traits kept are out of date. */
    String rules();
}
