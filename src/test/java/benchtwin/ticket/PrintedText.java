package benchtwin.ticket;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * What a PDF says to somebody who reads it, found by reading it back: its text, its fonts, and letters that are not in them.
 * @param pages   how many
 * @param text    its words, lines joined by single spaces
 * @param missing letters drawn as the empty box that stands for no letter
 * @param fonts   what it is written with
 * @param loose   fonts that are not in the file
 * @param title   its title
 * @param lang    its language
 */
record PrintedText(int pages, String text, List<String> missing, Set<String> fonts, Set<String> loose, String title,
                   String lang) {

    static PrintedText of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> missing = new ArrayList<>();
            Set<String> fonts = new TreeSet<>();
            Set<String> loose = new TreeSet<>();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    try {
                        PDFont font = letter.getFont();
                        for (int code : letter.getCharacterCodes()) {
                            if (font instanceof PDType0Font wide ? wide.codeToGID(code) == 0 : !font.isEmbedded()) {
                                missing.add(letter.getUnicode());
                            }
                        }
                    } catch (IOException unreadable) {
                        throw new UncheckedIOException(unreadable);
                    }
                    super.processTextPosition(letter);
                }
            };
            stripper.setSortByPosition(true);
            String text = stripper.getText(document).replaceAll("\\s+", " ");
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    (font.isEmbedded() ? fonts : loose).add(font.getName().replaceAll("^[A-Z]{6}\\+", ""));
                }
            }
            return new PrintedText(document.getNumberOfPages(), text, missing, fonts, loose,
                document.getDocumentInformation().getTitle(), document.getDocumentCatalog().getLanguage());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
