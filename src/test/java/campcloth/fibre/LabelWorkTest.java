package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The work of reading grows with the length of the text, not with its square. Work is measured as bytes that the reading thread
 * asked for, which no load on the machine changes; loops that ask for nothing are not seen.
 */
class LabelWorkTest {

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private static final LabelReader READER = LabelFixture.reader();
    private static final int SHORT = LabelReader.MOST_CHARACTERS / 4;

    /** Four times the text may take twice that in work, for buffers that grow by doubling; the square would be sixteen. */
    private static final double MOST_GROWTH = 8;

    private static final long MOST_BYTES_A_CHARACTER = 6_000;

    static Stream<String> worst() {
        return Stream.of(
                "a",
                "ab ",
                "1",
                "1 ",
                "1l0O",
                "cotton",
                "cotton ",
                "cott on ",
                "c0tton ",
                "c0tton-",
                "10 o/o ",
                "1O% c0tton ",
                "100% cotton ",
                "100% cotton\n",
                "100% Baumwolle / ",
                "1% cotton, ",
                "1/",
                "cotton/",
                "cotton or ",
                "raion ",
                "60 raion 40 pas ",
                "60% raion 40% samt ",
                "main ",
                "main: 100% cotton\n",
                "main, ",
                "en: ",
                "EN: 100% cotton DE: 100% Baumwolle ",
                "no 100% ull ",
                "de la ",
                "non ",
                "e\u0301",
                "glassilkwool",
                "\u00e6\u00f8",
                "- ",
                "\n",
                "zz-\n");
    }

    @ParameterizedTest
    @MethodSource("worst")
    void fourTimesTheTextIsNoSixteenTimesTheWork(String piece) {
        for (String start : List.of("", "60% ")) {
            long few = bytes(text(start, piece, SHORT));
            long many = bytes(text(start, piece, LabelReader.MOST_CHARACTERS));
            assertThat((double) many).as("%s then %s", few, many).isLessThan(MOST_GROWTH * few);
            assertThat(many).isLessThan(MOST_BYTES_A_CHARACTER * LabelReader.MOST_CHARACTERS);
        }
    }

    private static String text(String start, String piece, int length) {
        return (start + piece.repeat(length / piece.length() + 1)).substring(0, length);
    }

    /** The least of three readings, so that what is set up once does not count. */
    private static long bytes(String text) {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            long before = THREADS.getCurrentThreadAllocatedBytes();
            READER.read(text);
            least = Math.min(least, THREADS.getCurrentThreadAllocatedBytes() - before);
        }
        return least;
    }
}
