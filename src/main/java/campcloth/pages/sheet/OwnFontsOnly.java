package campcloth.pages.sheet;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/** Gives our own font for whichever is asked: no folder of this machine is searched for fonts and no list of them written. */
record OwnFontsOnly(TrueTypeFont own) implements FontMapper {

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(own, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(own, true);
    }

    @Override
    public CIDFontMapping getCIDFont(
            String name, @Nullable PDFontDescriptor descriptor, @Nullable PDCIDSystemInfo info) {
        return new CIDFontMapping(null, own, true);
    }
}
