package campcloth.garment.design;

import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * The finished sizes of an apron; it is tied, so there is no ease.
 *
 * @param bibHeightCm height of the bib, where there is one
 * @param strapCm length of each strap
 * @param notes what was taken for granted
 */
record ApronSizes(double waistCm, double lengthCm, double bibHeightCm, double strapCm, List<String> notes) {

    static ApronSizes of(Measurements wearer, Collection<Measurement> used) {
        List<String> notes = new ArrayList<>();
        ApronSizes sizes = new ApronSizes(
                wearer.orUsual(Apron.WAIST, notes),
                wearer.orUsual(Apron.LENGTH, notes),
                wearer.given(Apron.BIB_HEIGHT).orElse(Apron.BIB_HEIGHT.usualCm().orElseThrow()),
                wearer.given(Apron.STRAP).orElse(Apron.STRAP.usualCm().orElseThrow()),
                notes);
        notes.addAll(wearer.unusedNotes(used, "apron"));
        return sizes;
    }
}
