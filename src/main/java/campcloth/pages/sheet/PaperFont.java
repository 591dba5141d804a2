package campcloth.pages.sheet;

import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The letters of a PDF: Liberation Sans (SIL Open Font License 1.1) with Latin, Greek and Cyrillic. The libraries want it as a file,
 * so it is laid into one for as long as the program runs.
 */
final class PaperFont {

    static final String FAMILY = "Liberation Sans";

    /** Stands for a letter that the font has no sign for. */
    static final String NO_SIGN = "□";

    private final File file;
    private final TrueTypeFont font;
    private final CmapLookup signs;

    PaperFont(String resource) throws IOException {
        this.file = laidDown(resource);
        this.font = new TTFParser().parse(new RandomAccessReadBufferedFile(file));
        this.signs = font.getUnicodeCmapLookup();
    }

    private static File laidDown(String resource) throws IOException {
        Path path = Files.createTempFile("campcloth-", ".ttf");
        path.toFile().deleteOnExit();
        try (InputStream in = PaperFont.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException(resource + " is not there");
            }
            Files.copy(in, path, StandardCopyOption.REPLACE_EXISTING);
        }
        return path.toFile();
    }

    File file() {
        return file;
    }

    TrueTypeFont font() {
        return font;
    }

    /** To set a document with, which closes it in the end; only the letters used are put into it. */
    PDFontSupplier in(PDDocument document) {
        return new PDFontSupplier(loaded(document));
    }

    /**
     * Without the table of signs that take the place of others. All that the one of this font does is to join tone letters of phonetic
     * script (U+02E5 to U+02E9), and the library compiles it anew for every word it writes: that took most of the time of a sheet.
     */
    private PDFont loaded(PDDocument document) {
        try {
            TrueTypeFont own = new TTFParser().parse(new RandomAccessReadBufferedFile(file));
            own.setEnableGsub(false);
            document.registerTrueTypeFontForClosing(own);
            return PDType0Font.load(document, own, true);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Whether it has a sign for a letter, or the letter needs none. */
    boolean has(int letter) {
        return Character.isWhitespace(letter) || signs.getGlyphId(letter) != 0;
    }
}
