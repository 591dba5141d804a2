package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.PictureRules;
import campcloth.figure.Shown;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LayoutDrawingTest {

    private static final String HOSTILE = "</text><script>alert(\"1\")</script>&'\u0000\u0007\u202E\uD800]]>";
    private static final double LEAST_TEXT_MM = 2.2;

    static Stream<CuttingSheet> sheets() {
        CuttingSheet open = Sheets.hardShapes();
        return Stream.of(
                open,
                Sheets.many(60),
                folded(),
                Sheets.open(
                        60,
                        List.of(new Piece("wide name ".repeat(19), Outline.rectangle(55, 400), 3, true, true, false))),
                Sheets.open(1000, List.of(new Piece("speck", Outline.rectangle(0.5, 0.5), 20, true, true, false))),
                Sheets.open(5, List.of(new Piece("ribbon", Outline.rectangle(4, 90_000), 1, true, true, false))),
                with(open, List.of(new Stripes(3, 12, false), new Stripes(0, 8, true))));
    }

    private static CuttingSheet with(CuttingSheet sheet, List<Stripes> stripes) {
        return new CuttingSheet(
                sheet.title(),
                List.of("A cloth with a fact that is told in a long sentence. ".repeat(6)),
                sheet.widthCm(),
                sheet.lengthCm(),
                sheet.left(),
                sheet.right(),
                sheet.parts(),
                true,
                stripes);
    }

    private static CuttingSheet folded() {
        List<SheetPart> parts = List.of(
                new SheetPart(
                        "back", Outline.rectangle(60, 90).movedTo(40, 0), false, false, SheetPart.Cut.ON_RIGHT_FOLD),
                new SheetPart(
                        "sleeve 1 and 2",
                        Outline.rectangle(30, 50).movedTo(5, 4),
                        true,
                        false,
                        SheetPart.Cut.BOTH_LAYERS));
        return new CuttingSheet(
                "Folded", List.of(), 70, 90, ClothEdge.BOTH_SELVEDGES, ClothEdge.fold(70), parts, false, List.of());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everythingLiesInThePictureAndCanBeReadOnPaper(CuttingSheet sheet) throws Exception {
        List<String> drawings = new ArrayList<>(LayoutDrawing.a4Pages(sheet));
        assertThat(drawings.size()).isLessThan(70);
        drawings.add(LayoutDrawing.svg(sheet));
        for (String svg : drawings) {
            SvgPicture picture = new SvgPicture(svg);
            picture.assertNothingOutside();
            assertThat(picture.leastTextMm()).isGreaterThanOrEqualTo(LEAST_TEXT_MM);
            assertThat(picture.document.getDocumentElement().getAttribute("role"))
                    .isEqualTo("img");
            assertThat(picture.all("script")).isEmpty();
            assertThat(svg).doesNotContain("NaN", "Infinity", "href", "style");
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void onAPhoneEveryPartIsDrawnAndNamed(CuttingSheet sheet) throws Exception {
        String svg = LayoutDrawing.compactSvg(sheet);
        PictureRules picture =
                PictureRules.read(svg, sheet.title()).readableOnAPhone().wordsKeepTheirPlaces();
        for (String page : LayoutDrawing.a4Pages(sheet)) {
            PictureRules.read(page, sheet.title());
        }
        PictureRules.read(LayoutDrawing.svg(sheet), sheet.title());
        long outlines = picture.all("path").stream()
                .filter(p -> p.getAttribute("fill").equals("#fff"))
                .count();
        assertThat(outlines).isEqualTo(sheet.parts().size());
        List<String> words = picture.words();
        String missing = String.join(" ", words);
        List<CutRow> rows = LayoutDrawing.rows(sheet);
        assertThat(rows).hasSize(sheet.parts().size());
        for (CutRow row : rows) {
            String number = Integer.toString(row.number());
            assertThat(words.contains(number)
                            || missing.matches(".*No room for the number of:.*\\b" + number + "\\b.*"))
                    .as(number)
                    .isTrue();
            assertThat(words).as(number).anyMatch(w -> w.startsWith(number + ": "));
            assertThat(row.sentence()).startsWith("Piece " + number + " of " + rows.size() + ", " + row.name());
        }
    }

    @Test
    void rowsSayWhereEachPartLies() throws Exception {
        Shown.kept("layout-phone", LayoutDrawing.compactSvg(Sheets.hardShapes()));
        Shown.kept("layout-phone-folded", LayoutDrawing.compactSvg(folded()));
        Shown.kept("layout-phone-many", LayoutDrawing.compactSvg(Sheets.many(60)));
        List<CutRow> rows = LayoutDrawing.rows(folded());
        assertThat(rows)
                .extracting(CutRow::sentence)
                .containsExactlyInAnyOrder(
                        "Piece 1 of 2, sleeve 1 and 2, through both layers: 5 cm from the left edge (both selvedges),"
                                + " 4 cm from the cut end, 30 cm wide, 50 cm along the cloth, top down.",
                        "Piece 2 of 2, back, half, on the fold: 40 cm from the left edge (both selvedges), 0 cm from the"
                                + " cut end, 60 cm wide, 90 cm along the cloth.");
        CutRow sleeve = rows.get(0).turned() ? rows.get(0) : rows.get(1);
        assertThat(sleeve.fromLeftCm()).isEqualTo(5);
        assertThat(sleeve.fromCutCm()).isEqualTo(4);
        assertThat(sleeve.cut()).isEqualTo(SheetPart.Cut.BOTH_LAYERS);
    }

    @Test
    void hostileNamesStayWordsOnAPhone() throws Exception {
        for (String hostile : PictureRules.HOSTILE) {
            SheetPart part = new SheetPart(hostile, Outline.rectangle(60, 90), true, true, SheetPart.Cut.ONE_LAYER);
            CuttingSheet sheet = new CuttingSheet(
                    hostile,
                    List.of(hostile),
                    70,
                    90,
                    ClothEdge.SELVEDGE,
                    ClothEdge.SELVEDGE,
                    List.of(part),
                    false,
                    List.of());
            PictureRules.read(LayoutDrawing.compactSvg(sheet), "hostile")
                    .readableOnAPhone()
                    .wordsKeepTheirPlaces();
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everyPartIsDrawnAndListedOnce(CuttingSheet sheet) throws Exception {
        SvgPicture picture = new SvgPicture(LayoutDrawing.svg(sheet));
        assertThat(picture.parts()).hasSize(sheet.parts().size());
        List<String> names =
                sheet.parts().stream().map(SheetPart::name).sorted().toList();
        assertThat(picture.parts().keySet().stream()
                        .map(title -> title.replaceFirst("^\\d+: ", ""))
                        .map(title -> names.stream()
                                .filter(name -> title.startsWith(name + ","))
                                .findFirst()
                                .orElseThrow())
                        .sorted()
                        .toList())
                .isEqualTo(names);
        String list = String.join(" ", picture.list());
        for (int number = 1; number <= names.size(); number++) {
            assertThat((" " + list).split(" " + number + ": ", -1)).hasSize(2);
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void pagesTogetherShowEveryPartAndAllOfTheLength(CuttingSheet sheet) throws Exception {
        TreeSet<String> seen = new TreeSet<>();
        List<String> listed = new ArrayList<>();
        for (String page : LayoutDrawing.a4Pages(sheet)) {
            SvgPicture picture = new SvgPicture(page);
            assertThat(picture.frame).containsExactly(-10, -10, 210, 297);
            seen.addAll(picture.parts().keySet());
            listed.addAll(picture.list());
        }
        assertThat(seen).hasSize(sheet.parts().size());
        assertThat(listed.stream().filter(line -> line.matches("\\d+: .*")))
                .hasSize(sheet.parts().size());
    }

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
        SvgPicture picture = new SvgPicture(LayoutDrawing.svg(folded()));
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

    @Test
    void napAndStripesAreDrawnWhereTheyAre() throws Exception {
        CuttingSheet plain = Sheets.hardShapes();
        SvgPicture striped = new SvgPicture(LayoutDrawing.svg(with(plain, List.of(new Stripes(3, 50, false)))));
        assertThat(striped.has("nap")).isTrue();
        assertThat(striped.has("stripes-across")).isTrue();
        assertThat(striped.has("stripes-along")).isFalse();
        SvgPicture bare = new SvgPicture(LayoutDrawing.svg(plain));
        assertThat(bare.has("nap") || bare.has("stripes-across")).isFalse();
    }

    @Test
    void hostileNamesAreTextAndNothingElse() throws Exception {
        List<Piece> pieces = List.of(
                new Piece(HOSTILE, RandomPieces.trapezoid(60, 30, 80), 3, true, false, false),
                new Piece("band", Outline.rectangle(30, 5), 1, true, false, false));
        Layout layout = Nesting.layout(Strip.ofWidth(120), pieces, new Effort(0.05, 1));
        List<String> drawings = new ArrayList<>(LayoutDrawing.a4Pages(CuttingSheet.of(layout, HOSTILE)));
        drawings.add(LayoutDrawing.svg(layout, HOSTILE));
        for (String svg : drawings) {
            SvgPicture picture = new SvgPicture(svg);
            assertThat(picture.all("script")).isEmpty();
            assertThat(svg.chars()
                            .noneMatch(c -> c < 32 && c != '\n' || c == 0x202E || Character.isSurrogate((char) c)))
                    .isTrue();
            assertThat(picture.all("title").get(0).getTextContent())
                    .startsWith("</text><script>alert(\"1\")</script>&']]>");
        }
    }

    @Test
    void twoHundredPartsStaySmallAndAreAlwaysDrawnAlike() {
        CuttingSheet sheet = Sheets.many(200);
        String svg = LayoutDrawing.svg(sheet);
        assertThat(svg.getBytes(StandardCharsets.UTF_8).length).isLessThan(300_000);
        assertThat(LayoutDrawing.svg(sheet)).isEqualTo(svg);
        assertThat(LayoutDrawing.a4Pages(sheet)).isEqualTo(LayoutDrawing.a4Pages(sheet));
    }
}
