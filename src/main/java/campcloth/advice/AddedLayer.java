package campcloth.advice;

import campcloth.cloth.OutfitPart.Kind;

/**
 * A garment to put on besides, one of a list in which each comes on top of those before.
 *
 * @param kind what kind of part it is: told in an outfit with that insulation it is worn
 * @param name in words
 * @param insulationClo insulation I_clu of all that is then worn of the kind, from the garment lists
 * @param addsClo how much of that is more than before
 * @param gapClo what is then missing as worn in the coldest spell; 0 or less where nothing is
 * @param closes how far the need is then met
 */
public record AddedLayer(Kind kind, String name, double insulationClo, double addsClo, double gapClo, Closes closes) {}
