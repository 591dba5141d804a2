/**
 * What somebody goes to make: one garment for one event from one chosen cloth, kept and shared, with the sheet that goes along to
 * the shop and to the table; and how an event and a garment become the question that {@code advice} answers. May import
 * {@code figure}, {@code fibre}, {@code cloth}, {@code event}, {@code comfort}, {@code fire}, {@code garment}, {@code layout},
 * {@code advice}, {@code plan}.
 */
@NullMarked
package campcloth.errand;

import org.jspecify.annotations.NullMarked;
