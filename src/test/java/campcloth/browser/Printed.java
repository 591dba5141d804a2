package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * A PDF read back.
 *
 * @param pages size of each page
 * @param texts the text of each page
 * @param outside letters that do not lie on their page
 * @param coloured the strongest difference between red, green and blue in any dot, 0 to 255
 */
record Printed(List<PDRectangle> pages, List<String> texts, List<String> outside, int coloured) {

    private static final float DPI = 40;
    private static final float TOUCH = 0.5f;

    static Printed of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<PDRectangle> pages = new ArrayList<>();
            List<String> texts = new ArrayList<>();
            Letters letters = new Letters();
            int coloured = 0;
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                pages.add(document.getPage(i).getMediaBox());
                letters.setStartPage(i + 1);
                letters.setEndPage(i + 1);
                texts.add(letters.getText(document));
                coloured = Math.max(coloured, colour(new PDFRenderer(document).renderImageWithDPI(i, DPI)));
            }
            return new Printed(pages, texts, letters.outside, coloured);
        } catch (IOException broken) {
            throw new AssertionError("is no PDF that can be read", broken);
        }
    }

    String text() {
        return String.join("\n", texts);
    }

    /** One to three pages so wide and high, in mm, with nothing beside them and nothing in colour. */
    void fits(double widthMm, double heightMm) {
        assertThat(pages).hasSizeBetween(1, 3);
        for (PDRectangle page : pages) {
            assertThat(page.getWidth() * 25.4 / 72).isCloseTo(widthMm, org.assertj.core.api.Assertions.within(0.5));
            assertThat(page.getHeight() * 25.4 / 72).isCloseTo(heightMm, org.assertj.core.api.Assertions.within(0.5));
        }
        assertThat(outside).isEmpty();
        assertThat(coloured).isLessThan(12);
    }

    private static int colour(BufferedImage page) {
        int most = 0;
        for (int x = 0; x < page.getWidth(); x++) {
            for (int y = 0; y < page.getHeight(); y++) {
                int dot = page.getRGB(x, y);
                int red = dot >> 16 & 0xFF;
                int green = dot >> 8 & 0xFF;
                int blue = dot & 0xFF;
                most = Math.max(most, Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue)));
            }
        }
        return most;
    }

    private static final class Letters extends PDFTextStripper {

        private final List<String> outside = new ArrayList<>();

        Letters() {
            setSuppressDuplicateOverlappingText(false);
        }

        @Override
        protected void processTextPosition(TextPosition letter) {
            super.processTextPosition(letter);
            PDRectangle page = getCurrentPage().getMediaBox();
            boolean upright = letter.getDir() == 0 || letter.getDir() == 180;
            float right = letter.getX() + (upright ? letter.getWidth() : 0);
            boolean inside = letter.getX() >= -TOUCH
                    && right <= page.getWidth() + TOUCH
                    && letter.getY() >= -TOUCH
                    && letter.getY() <= page.getHeight() + TOUCH;
            if (!inside && !letter.getUnicode().isBlank()) {
                outside.add(letter.getUnicode() + " at " + letter.getX() + ", " + letter.getY());
            }
        }
    }
}
