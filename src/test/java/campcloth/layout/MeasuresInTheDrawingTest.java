package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The measures written into the drawing of a layout: where corners, edges and the fold lie. */
class MeasuresInTheDrawingTest {

    @Test
    void cornersOfRectanglesStandWhereTheyArePlaced() throws Exception {
        Layout layout = Nesting.layout(
                Strip.ofWidth(140),
                List.of(
                        new Piece("body", Outline.rectangle(64.3, 98), 2, true, false, false),
                        new Piece("sleeve", Outline.rectangle(40, 55.5), 2, true, false, false)),
                new Effort(0.05, 1));
        Map<String, List<String>> parts = new SvgPicture(LayoutDrawing.svg(layout, "Tunic")).parts();
        for (Placement at : layout.placements()) {
            Outline outline = layout.outlineOf(at);
            double right = at.xCm() + outline.widthCm();
            double top = at.yCm() + outline.heightCm();
            List<String> words = parts.entrySet().stream()
                    .filter(e -> e.getKey().contains(": " + at.piece() + " " + at.copy() + ","))
                    .findFirst()
                    .orElseThrow()
                    .getValue();
            for (double[] corner :
                    new double[][] {{at.xCm(), at.yCm()}, {right, at.yCm()}, {right, top}, {at.xCm(), top}}) {
                assertThat(words)
                        .filteredOn(word -> word.startsWith("→"))
                        .hasSize(4)
                        .anyMatch(word -> isAt(word, corner[0], corner[1]));
            }
        }
    }

    private static boolean isAt(String words, double xCm, double yCm) {
        double[] at = SvgPicture.numbers(words);
        return Math.abs(at[0] - xCm) <= 0.05 + 1e-9 && Math.abs(at[1] - yCm) <= 0.05 + 1e-9;
    }

    @Test
    void whatHasNoRoomInThePictureStandsInTheList() throws Exception {
        CuttingSheet sheet =
                Sheets.open(150, List.of(new Piece("loop", Outline.rectangle(2, 8), 2, true, false, false)));
        String list = String.join(" ", new SvgPicture(LayoutDrawing.svg(sheet)).list());
        for (SheetPart part : sheet.parts()) {
            double x = part.outline().leftCm();
            assertThat(list).contains("→" + cm(x) + " ↑0").contains("→" + cm(x + 2) + " ↑8");
        }
    }

    private static String cm(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    @Test
    void aRoundedEdgeIsToldByCentreAndRadius() throws Exception {
        SheetPart quarter = new SheetPart("cloak", Sheets.quarter(70, 12), false, false, SheetPart.Cut.ONE_LAYER);
        CuttingSheet sheet = new CuttingSheet(
                "Cloak", List.of(), 75, 70, ClothEdge.SELVEDGE, ClothEdge.SELVEDGE, List.of(quarter), false, List.of());
        SvgPicture picture = new SvgPicture(LayoutDrawing.svg(sheet));
        List<String> words = new ArrayList<>(picture.parts().values().iterator().next());
        words.addAll(picture.list());
        assertThat(words.stream().filter(word -> word.contains("r 70 from →0 ↑0")))
                .hasSize(1);
        assertThat(words.stream().filter(word -> word.contains("r 12 from →0 ↑0")))
                .hasSize(1);
        assertThat(words.stream().filter(word -> word.startsWith("→")))
                .containsExactlyInAnyOrder("→12 ↑0", "→70 ↑0", "→0 ↑70", "→0 ↑12");
    }

    @Test
    void anEggIsToldByAFewPoints() throws Exception {
        SheetPart egg = new SheetPart("egg", Sheets.arc(20, 30, 20, 30, 0, 350), false, false, SheetPart.Cut.ONE_LAYER);
        CuttingSheet sheet = new CuttingSheet(
                "Egg", List.of(), 40, 60, ClothEdge.SELVEDGE, ClothEdge.SELVEDGE, List.of(egg), false, List.of());
        List<String> words = new SvgPicture(LayoutDrawing.svg(sheet))
                .parts()
                .values()
                .iterator()
                .next();
        assertThat(words.stream().filter(word -> word.startsWith("→")).count()).isBetween(3L, 8L);
        assertThat(words).noneMatch(word -> word.startsWith("r "));
    }

    @Test
    void foldedClothShowsItsFoldAndHalvesMeasuredFromIt() throws Exception {
        SvgPicture picture = new SvgPicture(LayoutDrawing.svg(Sheets.folded()));
        assertThat(picture.has("right-edge-fold")).isTrue();
        assertThat(picture.has("left-edge-fold")).isFalse();
        Map<String, List<String>> parts = picture.parts();
        assertThat(parts.keySet())
                .anyMatch(title -> title.contains("back, half, on the fold, 60 × 90 cm"))
                .anyMatch(title -> title.contains("sleeve 1 and 2, through both layers, 30 × 50 cm, top down"));
        List<String> back = parts.entrySet().stream()
                .filter(e -> e.getKey().contains("back"))
                .findFirst()
                .orElseThrow()
                .getValue();
        assertThat(back).contains("←30 ↑0", "←30 ↑90", "←0 ↑0", "←0 ↑90");
        for (CuttingSheet open : List.of(Sheets.hardShapes(), Sheets.many(5))) {
            assertThat(LayoutDrawing.svg(open)).doesNotContain("-fold\"", "FOLD", "fold:");
        }
    }
}
