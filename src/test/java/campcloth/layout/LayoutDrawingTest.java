package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.PictureRules;
import campcloth.figure.Shown;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
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
                Sheets.folded(),
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
        Shown.kept("layout-phone-folded", LayoutDrawing.compactSvg(Sheets.folded()));
        Shown.kept("layout-phone-many", LayoutDrawing.compactSvg(Sheets.many(60)));
        List<CutRow> rows = LayoutDrawing.rows(Sheets.folded());
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
