package campcloth.advice;

/**
 * Two cloths that serve a hot day and a cold night together: one for the garment, the other for a cloak over it in the cold.
 *
 * @param garmentId id of the garment's cloth
 * @param cloakId id of the cloak's cloth
 * @param heat wettedness of the skin that the hot spells ask for in the garment alone, over the comfortable one; the mean by hours
 * @param gapClo what is missing as worn in the cold spells with the cloak; 0 or less where nothing is
 * @param closes how far the cloak meets the need of the cold spells
 * @param because why these two
 */
public record LayerPair(String garmentId, String cloakId, double heat, double gapClo, Closes closes, String because) {}
