package campcloth.rest;

import java.io.IOException;
import java.io.OutputStream;

/** One file of the export of all that is a user's own. A further kind of thing that is kept needs a further bean and no more. */
interface ExportPart {

    /** Name of the file. */
    String file();

    /** Writes the file; leaves the stream open. */
    void write(OutputStream out) throws IOException;
}
