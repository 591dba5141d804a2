package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The engine against the shortest length of few rectangles, found by trying every place. */
class ExactRectanglesTest {

    private static final int CASES = 60;
    private static final int WIDTH = 7;

    @Test
    void theEngineIsNeverBelowTheOptimumAndNearlyAlwaysReachesIt() {
        int reached = 0;
        for (long seed = 1; seed <= CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int[][] boxes = new int[3 + random.nextInt(3)][2];
            List<Piece> pieces = new ArrayList<>();
            for (int[] box : boxes) {
                box[0] = 1 + random.nextInt(WIDTH - 1);
                box[1] = 1 + random.nextInt(5);
                pieces.add(
                        new Piece("box " + pieces.size(), Outline.rectangle(box[0], box[1]), 1, false, false, false));
            }
            double length = Nesting.layout(Strip.ofWidth(WIDTH), pieces, new Effort(0.02, seed))
                    .lengthCm();
            int optimum = new Exact(boxes).optimum();
            assertThat(length).as("seed " + seed).isGreaterThan(optimum - 1e-6);
            reached += length < optimum + 1e-6 ? 1 : 0;
        }
        System.out.printf("few rectangles: optimum reached in %d of %d%n", reached, CASES);
        assertThat(reached).isGreaterThanOrEqualTo(CASES * 95 / 100);
    }

    /** Whole-number places, each box at every one of them, in the order given; bounded by the best length so far. */
    private static final class Exact {

        private final int[][] boxes;
        private final int[][] at;
        private int best;

        Exact(int[][] boxes) {
            this.boxes = boxes;
            this.at = new int[boxes.length][2];
            for (int[] box : boxes) {
                best += box[1];
            }
        }

        int optimum() {
            place(0, 0);
            return best;
        }

        private void place(int next, int length) {
            if (next == boxes.length) {
                best = length;
                return;
            }
            for (int y = 0; Math.max(length, y + boxes[next][1]) < best; y++) {
                for (int x = 0; x + boxes[next][0] <= WIDTH; x++) {
                    at[next][0] = x;
                    at[next][1] = y;
                    if (isFree(next)) {
                        place(next + 1, Math.max(length, y + boxes[next][1]));
                    }
                }
            }
        }

        private boolean isFree(int own) {
            for (int i = 0; i < own; i++) {
                if (at[own][0] < at[i][0] + boxes[i][0]
                        && at[i][0] < at[own][0] + boxes[own][0]
                        && at[own][1] < at[i][1] + boxes[i][1]
                        && at[i][1] < at[own][1] + boxes[own][1]) {
                    return false;
                }
            }
            return true;
        }
    }
}
