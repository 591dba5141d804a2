/** How a cutting sheet becomes a picture: measures, labels, pages. Lengths on cloth in cm, on paper in mm. */
@NullMarked
package campcloth.layout.drawing;

import org.jspecify.annotations.NullMarked;
