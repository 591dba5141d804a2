package campcloth.job;

import java.io.IOException;
import java.io.InputStream;

/** Bytes that are handed in with a job; read from their beginning each time. */
@FunctionalInterface
public interface Payload {

    InputStream open() throws IOException;
}
