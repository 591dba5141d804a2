package campcloth.supply;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Ends the reading where a single row goes on and on, so that no cell can fill the memory. */
final class RowLimit extends FilterReader {

    /** Longest row; what is read ahead of a row counts with it. */
    static final int MOST_CHARACTERS = 256 * 1024;

    private long left = MOST_CHARACTERS;
    private long line = 1;

    RowLimit(Reader text) {
        super(text);
    }

    /** A row was longer than it may be. */
    static final class Exceeded extends IOException {

        private static final long serialVersionUID = 1L;

        private final long line;

        Exceeded(long line) {
            super("a row is too long");
            this.line = line;
        }

        long line() {
            return line;
        }
    }

    /** A row was read to its end, on that line. */
    void rowBegins(long lastLine) {
        left = MOST_CHARACTERS;
        line = lastLine;
    }

    @Override
    public int read() throws IOException {
        int one = super.read();
        take(one < 0 ? 0 : 1);
        return one;
    }

    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        int some = super.read(target, offset, length);
        take(Math.max(some, 0));
        return some;
    }

    private void take(int characters) throws Exceeded {
        left -= characters;
        if (left < 0) {
            throw new Exceeded(line);
        }
    }
}
