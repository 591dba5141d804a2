/**
 * The event a garment is made for: its spells of weather and activity, its fires, its rules. Air degrees Celsius, wind m/s at
 * 10 m height as forecast, humidity percent, distances m, fires kW. May import {@code figure}.
 */
@NullMarked
package campcloth.event;

import org.jspecify.annotations.NullMarked;
