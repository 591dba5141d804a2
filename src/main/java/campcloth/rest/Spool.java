package campcloth.rest;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Bytes on the way between a client and the database, kept on disk, so that a slow client holds no connection and a long text no
 * memory. The file goes with the spool, also where the program is killed.
 */
final class Spool implements AutoCloseable {

    private static final int AT_ONCE = 8192;

    private final FileChannel file;

    Spool() throws IOException {
        Path path = Files.createTempFile("campcloth-", ".spool");
        this.file = FileChannel.open(
                path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
    }

    /** Takes bytes to their end; refuses more than so many. */
    void take(InputStream bytes, long most) throws IOException {
        OutputStream out = Channels.newOutputStream(file);
        byte[] some = new byte[AT_ONCE];
        long taken = 0;
        int length = bytes.read(some);
        while (length >= 0) {
            taken += length;
            if (taken > most) {
                throw TooLarge.list();
            }
            out.write(some, 0, length);
            length = bytes.read(some);
        }
    }

    /** Where to write to. */
    OutputStream out() {
        return Channels.newOutputStream(file);
    }

    /** All of it, from the beginning. */
    InputStream in() throws IOException {
        file.position(0);
        return Channels.newInputStream(file);
    }

    long size() throws IOException {
        return file.size();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
