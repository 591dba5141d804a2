/**
 * The heat balance of a dressed person outdoors: how warm a garment of a given cloth is, how long it lasts in the cold, how
 * wet the skin becomes under it in the heat. Air degrees Celsius, wind m/s, heat W per m2 of body surface (1 met = 58.2 W/m2),
 * insulation clo (1 clo = 0.155 m2 K/W). May import {@code figure}, {@code cloth} and {@code event}; the models behind it are
 * hidden in {@code comfort.model}.
 */
@NullMarked
package campcloth.comfort;

import org.jspecify.annotations.NullMarked;
