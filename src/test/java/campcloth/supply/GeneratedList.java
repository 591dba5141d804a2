package campcloth.supply;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;

/** A supplier's list of so many rows, the same for the same seed. Every row can be used; keys are K1, K2 and so on. */
public final class GeneratedList {

    private static final String[] COMPOSITIONS = {
        "100% linen",
        "100% wool",
        "100% cotton",
        "55% linen 45% cotton",
        "80% wool 20% polyamide",
        "65% polyester 35% cotton"
    };
    private static final String[] NAMES = {"Linen", "Twill", "Broadcloth", "Canvas", "Serge", "Drill"};

    private GeneratedList() {}

    /** Writes the list. */
    public static void write(long seed, int rows, OutputStream out) throws IOException {
        SplittableRandom draw = new SplittableRandom(seed);
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        text.write("article no;name;composition;weight (g/m2);width cm;price EUR/m;weave\n");
        for (int i = 1; i <= rows; i++) {
            String composition = COMPOSITIONS[draw.nextInt(COMPOSITIONS.length)];
            text.write("K" + i + ";" + NAMES[draw.nextInt(NAMES.length)] + " " + i + ";" + composition + ";"
                    + draw.nextInt(80, 600) + ";" + draw.nextInt(90, 170) + ";" + draw.nextInt(3, 60) + ",50;"
                    + (draw.nextBoolean() ? "plain" : "twill") + "\n");
        }
        text.flush();
    }
}
