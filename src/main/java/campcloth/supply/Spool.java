package campcloth.supply;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Bytes on the way between a client and the database, kept on disk, so that a slow client holds no connection and a long text no
 * memory. The file goes with the spool, also where the program is killed.
 */
public final class Spool implements AutoCloseable {

    private static final int AT_ONCE = 8192;

    private final FileChannel file;

    public Spool() throws IOException {
        Path path = Files.createTempFile("campcloth-", ".spool");
        this.file = FileChannel.open(
                path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
    }

    /**
     * Takes bytes to their end, or until there are more than so many.
     *
     * @return whether all of them are here
     */
    public boolean take(InputStream bytes, long most) throws IOException {
        OutputStream out = out();
        byte[] some = new byte[AT_ONCE];
        long taken = 0;
        int length = bytes.read(some);
        while (length >= 0) {
            taken += length;
            if (taken > most) {
                return false;
            }
            out.write(some, 0, length);
            length = bytes.read(some);
        }
        return true;
    }

    /** Where to write to. */
    public OutputStream out() {
        return Channels.newOutputStream(file);
    }

    /** All of it, from the beginning; each reader has a place of its own, and its end does not end the spool. */
    public InputStream in() {
        return new FromTheBeginning(file);
    }

    public long size() throws IOException {
        return file.size();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }

    /** Reads on from where it is, whatever others do. */
    private static final class FromTheBeginning extends InputStream {

        private final FileChannel file;
        private long at;

        FromTheBeginning(FileChannel file) {
            this.file = file;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] target, int offset, int length) throws IOException {
            if (length == 0) {
                return 0;
            }
            int some = file.read(ByteBuffer.wrap(target, offset, length), at);
            at += Math.max(some, 0);
            return some;
        }
    }
}
