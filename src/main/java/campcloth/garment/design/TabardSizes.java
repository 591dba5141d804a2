package campcloth.garment.design;

import campcloth.garment.Measurements;
import java.util.ArrayList;
import java.util.List;

/**
 * The finished sizes of a tabard.
 *
 * @param widthCm of front and of back, edge to edge at the shoulder
 * @param lengthCm shoulder to hem
 * @param neckDiameterCm across the neck
 * @param headCm circumference of the head
 * @param waistCm round the waist over what is worn beneath
 * @param notes what was taken for granted
 */
record TabardSizes(
        double widthCm, double lengthCm, double neckDiameterCm, double headCm, double waistCm, List<String> notes) {

    static TabardSizes of(Measurements wearer) {
        List<String> notes = new ArrayList<>();
        TabardSizes sizes = new TabardSizes(
                wearer.orUsual(Tabard.WIDTH_ACROSS, notes),
                wearer.orUsual(Tabard.LENGTH, notes),
                wearer.orUsual(UpperBody.NECK, notes),
                wearer.given(UpperBody.HEAD).orElse(UpperBody.HEAD.usualCm().orElseThrow()),
                wearer.given(Tabard.WAIST).orElse(Tabard.WAIST.usualCm().orElseThrow()),
                notes);
        notes.addAll(wearer.unusedNotes(Tabard.MEASUREMENTS, "tabard"));
        Neck.checkBeside(sizes.neckDiameterCm, sizes.widthCm);
        return sizes;
    }
}
