package campcloth.comfort;

import campcloth.cloth.Cloth;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Wear;
import campcloth.event.Spell;
import campcloth.figure.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Run by hand ({@code mvn test -Dtest=ComfortBenchmark}): how long a cloth takes in a spell with the models on a lattice, lattice
 * included, beside the models themselves, by how many cloths are asked for. Prints medians and their ratio; asserts nothing.
 */
class ComfortBenchmark {

    private static final int SPELLS = 12;
    private static final int RUNS = 7;
    private static final int WARM_UP = 3;
    private static final Wear TUNIC = new Wear(true, Layer.OUTER, Fit.LOOSE, false, 65, 1.7);

    @Test
    void latticeAgainstModels() {
        for (boolean wet : new boolean[] {false, true}) {
            List<Spell> spells = spells(wet);
            for (int cloths : new int[] {1, 4, 16, 64, 256, 1024}) {
                print(wet, spells, cloths(cloths));
            }
        }
    }

    private static void print(boolean wet, List<Spell> spells, List<Cloth> cloths) {
        double[] lattice = new double[RUNS];
        double[] models = new double[RUNS];
        for (int run = -WARM_UP; run < RUNS; run++) {
            long start = System.nanoTime();
            ask(Comfort.in(spells), cloths);
            long between = System.nanoTime();
            ask(Comfort.directly(spells, Optional.empty()), cloths);
            long end = System.nanoTime();
            if (run >= 0) {
                lattice[run] = (between - start) / 1e3 / cloths.size() / SPELLS;
                models[run] = (end - between) / 1e3 / cloths.size() / SPELLS;
            }
        }
        Arrays.sort(lattice);
        Arrays.sort(models);
        System.out.printf(
                Locale.ROOT,
                "%s, %4d cloths: lattice %.1f us a cloth and spell, models %.1f us, ratio %.1f%n",
                wet ? "wet" : "dry",
                cloths.size(),
                lattice[RUNS / 2],
                models[RUNS / 2],
                models[RUNS / 2] / lattice[RUNS / 2]);
    }

    private static void ask(Comfort comfort, List<Cloth> cloths) {
        cloths.forEach(cloth -> comfort.of(cloth, TUNIC));
    }

    private static List<Spell> spells(boolean wet) {
        List<Spell> spells = new ArrayList<>();
        LatticeDraw draw = new LatticeDraw(1);
        while (spells.size() < SPELLS) {
            Spell spell = draw.spell();
            if (spell.airC() >= 0
                    && spell.airC() <= 40
                    && spell.windMs() <= 8
                    && wet == spell.wetting().isPresent()) {
                spells.add(spell);
            }
        }
        return spells;
    }

    private static List<Cloth> cloths(int count) {
        LatticeDraw draw = new LatticeDraw(2);
        List<Cloth> cloths = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double mm = draw.between(0.2, 3);
            double spread = draw.from(0.1, 0.3);
            cloths.add(Samples.cloth(
                    "cloth " + i,
                    about(mm, spread),
                    about(draw.between(15, 1500), spread),
                    about(mm * draw.from(4, 8) + draw.from(0, 2), spread)));
        }
        return cloths;
    }

    private static Figure about(double value, double spread) {
        return Samples.between(value * (1 - spread), value, value * (1 + spread));
    }
}
