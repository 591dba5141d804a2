/**
 * What cloth is spun from: fibres with their properties, blends, the reading of fibre-content labels. Shares are percent of
 * mass with the agreed allowances of Regulation (EU) No 1007/2011, densities g/cm3, temperatures degrees Celsius. May import
 * {@code figure}.
 */
@NullMarked
package campcloth.fibre;

import org.jspecify.annotations.NullMarked;
