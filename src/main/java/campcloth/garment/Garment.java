package campcloth.garment;

import java.util.List;

/**
 * A design made up for one wearer and one cloth: everything that is cut and sewn for one garment.
 *
 * @param design key of the design
 * @param pieces pieces to cut
 * @param seams seams to sew
 * @param hems edges to hem
 * @param seamAllowanceCm cloth beyond each seam line
 * @param lengthRule the length people reckon with beforehand
 * @param notes what was taken for granted and what to know
 * @param cautions what to check before cutting
 */
public record Garment(
        String design,
        List<GarmentPiece> pieces,
        List<Seam> seams,
        List<Hem> hems,
        double seamAllowanceCm,
        LengthRule lengthRule,
        List<String> notes,
        List<String> cautions) {

    public Garment {
        pieces = List.copyOf(pieces);
        seams = List.copyOf(seams);
        hems = List.copyOf(hems);
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
    }
}
