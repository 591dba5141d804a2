package campcloth.errand;

import campcloth.garment.Hem;
import campcloth.garment.Seam;
import java.util.List;

/**
 * A step of sewing, with what is sewn in it.
 *
 * @param number its place, counted from 1
 * @param what what to do
 * @param because why it comes here; empty in plans of old
 * @param seams seams that are sewn in it
 * @param hems edges that are hemmed in it
 */
public record SewingLine(int number, String what, String because, List<Seam> seams, List<Hem> hems) {

    public SewingLine {
        seams = List.copyOf(seams);
        hems = List.copyOf(hems);
    }
}
