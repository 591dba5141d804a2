package campcloth.layout.search;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The upper outline of rectangles that lie on a strip. */
class SkylineTest {

    @Test
    void layingDividesAStretchAndLevelStretchesJoin() {
        Skyline skyline = new Skyline(10, 8);
        skyline.lay(0, 4, 3, false);
        assertThat(skyline.lowest()).isEqualTo(1);
        assertThat(skyline.leftOf(1)).isEqualTo(4);
        assertThat(skyline.rightOf(1)).isEqualTo(10);
        assertThat(skyline.leftWall(1)).isEqualTo(3);
        assertThat(skyline.rightWall(1)).isInfinite();
        skyline.lay(1, 2, 5, true);
        assertThat(skyline.rightOf(1)).isEqualTo(8);
        assertThat(skyline.rightWall(1)).isEqualTo(5);
        skyline.lay(1, 4, 3, false);
        assertThat(skyline.leftOf(0)).isEqualTo(0);
        assertThat(skyline.rightOf(0)).isEqualTo(8);
        assertThat(skyline.heightOf(0)).isEqualTo(3);
    }

    @Test
    void aStretchGivenUpRisesToItsLowerNeighbour() {
        Skyline skyline = new Skyline(10, 8);
        skyline.lay(0, 3, 4, false);
        skyline.lay(1, 3, 6, true);
        assertThat(skyline.lowest()).isEqualTo(1);
        skyline.giveUp(1);
        assertThat(skyline.lowest()).isZero();
        assertThat(skyline.rightOf(0)).isEqualTo(7);
        assertThat(skyline.heightOf(0)).isEqualTo(4);
    }

    @Test
    void whatLiesUnderACeilingIsWhatFits() {
        Work work = new Work(1);
        RectangleFilling filling =
                new RectangleFilling(10, new double[] {6, 4, 5, 5, 7}, new double[] {3, 3, 2, 2, 9}, work);
        assertThat(filling.leftOut(new int[] {0, 1, 2, 3, 4}, 5)).isEqualTo(7 * 9);
        assertThat(filling.leftOut(new int[] {0, 1, 2, 3, 4}, 14)).isZero();
        assertThat(filling.leftOut(new int[] {0, 1, 2, 3, 4}, 13.9)).isEqualTo(7 * 9);
    }
}
