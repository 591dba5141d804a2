package campcloth.garment;

import java.util.List;

/**
 * Machine needle and stitch length for a cloth, by its weight. Common practice, no source: NM 60 on very light cloth such as
 * voile and thin silk (under about 60 g/m2), 70 to 80 on light (under about 130), 80 to 90 on medium (to 250), 90 to 100 on heavy (to 350), 100 to 110 above; straight stitch 2.5 mm.
 * Where two sizes do, the project takes the finer one for the lighter half of the band. Holds for woven cloth.
 *
 * @param nm size, the blade's diameter in hundredths of a mm
 * @param stitchLengthMm length of the straight stitch
 */
public record Needle(int nm, double stitchLengthMm) {

    private record Band(double belowGsm, Needle needle) {}

    private static final List<Band> BANDS = List.of(
            new Band(60, new Needle(60, 2.0)),
            new Band(70, new Needle(70, 2.0)),
            new Band(90, new Needle(70, 2.5)),
            new Band(190, new Needle(80, 2.5)),
            new Band(300, new Needle(90, 2.5)),
            new Band(400, new Needle(100, 3.0)),
            new Band(Double.POSITIVE_INFINITY, new Needle(110, 3.5)));

    public static Needle forWeight(double weightGsm) {
        return BANDS.stream()
                .filter(band -> weightGsm < band.belowGsm())
                .findFirst()
                .orElseThrow()
                .needle();
    }
}
