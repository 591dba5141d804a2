package campcloth.fibre.label;

import campcloth.fibre.Fibre;
import java.math.BigDecimal;

/**
 * A fibre with its share as written.
 *
 * @param fibre the fibre
 * @param percent share in percent, with as many decimals as written
 */
record Share(Fibre fibre, BigDecimal percent) {}
