package campcloth.garment;

import java.util.List;

/**
 * A design made up for one wearer and one cloth: everything that is cut and sewn for one garment.
 *
 * @param design key of the design
 * @param pieces pieces to cut
 * @param smallPieces facings, bindings, pockets: may come from other cloth or from the offcuts
 * @param sewing seams, hems and the order of the work
 * @param fitting whether it goes on and what can be altered
 * @param lengthRule the length people reckon with beforehand
 * @param savings sizes that can be cut down where cloth is short
 * @param notes what was taken for granted and what to know
 * @param cautions what to check before cutting
 */
public record Garment(
        String design,
        List<GarmentPiece> pieces,
        List<GarmentPiece> smallPieces,
        Sewing sewing,
        Fitting fitting,
        LengthRule lengthRule,
        List<Saving> savings,
        List<String> notes,
        List<String> cautions) {

    public Garment {
        pieces = List.copyOf(pieces);
        smallPieces = List.copyOf(smallPieces);
        savings = List.copyOf(savings);
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
    }
}
