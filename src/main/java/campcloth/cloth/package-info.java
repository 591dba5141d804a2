/**
 * Cloth as it lies in the shop: what it is made of and how, its figures with their intervals and sources, estimates for the
 * figures that nobody measured, how it is worn. Mass g/m2, thickness mm, air permeability mm/s at 100 Pa (equal to l/(m2 s)),
 * water-vapour resistance m2 Pa/W, shrinkage positive percent. May import {@code figure} and {@code fibre}.
 */
@NullMarked
package campcloth.cloth;

import org.jspecify.annotations.NullMarked;
