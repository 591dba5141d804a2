package campcloth.pages.sheet;

import campcloth.layout.LayoutDrawing;
import campcloth.pages.Units;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/**
 * Sets a sheet as PDF. Everything that goes into it is here: its own texts, style, drawing and letters. Whatever else it might ask
 * for, by file or by network, is refused.
 */
@Component
class SheetPdf {

    private static final int PLAIN = 400;
    private static final int BOLD = 700;

    /** In the drawing, and in bold text for letters that only the plain font has. */
    private static final Set<FSFontUseCase> BESIDES = EnumSet.of(FSFontUseCase.SVG, FSFontUseCase.FALLBACK_PRE);

    private final ITemplateEngine templates;
    private final PaperFont plain;
    private final PaperFont bold;
    private final String style;

    SheetPdf(ITemplateEngine templates) throws IOException {
        XRLog.setLoggingEnabled(false);
        this.templates = templates;
        this.plain = new PaperFont("/liberation/LiberationSans-Regular.ttf");
        this.bold = new PaperFont("/liberation/LiberationSans-Bold.ttf");
        this.style = read("/paper/sheet.css");
        FontMappers.set(new OwnFontsOnly(plain.font()));
    }

    private static String read(String resource) throws IOException {
        try (InputStream in = SheetPdf.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException(resource + " is not there");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    byte[] of(SheetView view, Paper paper, Units units) {
        Context context = new Context(
                Locale.ENGLISH,
                Map.of(
                        "view",
                        view,
                        "units",
                        units,
                        "style",
                        style + "@page { size: " + paper.size() + "; }",
                        "drawing",
                        LayoutDrawing.onePage(KeptSheets.drawn(view.plan()))));
        try {
            return set(templates.process("sheet/paper", context));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private byte[] set(String xhtml) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument();
                BatikSVGDrawer drawings = new BatikSVGDrawer()) {
            new PdfRendererBuilder()
                    .usePDDocument(document)
                    .useFastMode()
                    .useExternalResourceAccessControl(
                            (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
                    .useExternalResourceAccessControl(
                            (uri, type) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
                    .useSVGDrawer(drawings)
                    .useFont(plain.in(document), PaperFont.FAMILY, PLAIN, FontStyle.NORMAL, true)
                    .useFont(bold.in(document), PaperFont.FAMILY, BOLD, FontStyle.NORMAL, true)
                    .useFont(plain.file(), PaperFont.FAMILY, PLAIN, FontStyle.NORMAL, true, BESIDES)
                    .useFont(bold.file(), PaperFont.FAMILY, BOLD, FontStyle.NORMAL, true, BESIDES)
                    .useReplacementText(PaperFont.NO_SIGN)
                    .withProducer("Campcloth")
                    .withW3cDocument(PaperDocument.of(xhtml, plain), null)
                    .toStream(out)
                    .run();
        }
        return out.toByteArray();
    }
}
