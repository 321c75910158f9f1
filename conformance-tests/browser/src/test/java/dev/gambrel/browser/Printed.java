package dev.gambrel.browser;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.cuttingtest.wording.PartNames;
import dev.gambrel.yields.cuttingtest.wording.Written;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A page as it comes out of the printer, in points of a 72nd of an inch. */
record Printed(PDDocument document, List<List<TextPosition>> letters, List<String> texts) implements AutoCloseable {
    /** 14 mm. */
    private static final double MARGIN = 14 / 25.4 * 72;

    static Printed of(byte[] pdf) throws IOException {
        PDDocument document = Loader.loadPDF(pdf);
        List<List<TextPosition>> letters = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
            List<TextPosition> here = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    here.add(letter);
                    super.processTextPosition(letter);
                }
            };
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            texts.add(stripper.getText(document));
            letters.add(here);
        }
        return new Printed(document, letters, texts);
    }

    private List<Integer> pages() {
        return IntStream.range(0, texts.size()).boxed().toList();
    }

    List<String> pagesNotA4() {
        return pages().stream()
                .map(page -> document.getPage(page).getMediaBox())
                .filter(box -> Math.abs(box.getWidth() - PDRectangle.A4.getWidth()) > 1
                        || Math.abs(box.getHeight() - PDRectangle.A4.getHeight()) > 1)
                .map(PDRectangle::toString)
                .toList();
    }

    List<Integer> emptyPages() {
        return pages().stream().filter(page -> texts.get(page).isBlank()).toList();
    }

    /** A row that is cut in two has letters at the very edge of what may be printed on. */
    List<Integer> pagesWrittenOverTheirMargin() {
        return pages().stream()
                .filter(page -> letters.get(page).stream()
                        .anyMatch(letter -> letter.getYDirAdj() > PDRectangle.A4.getHeight() - MARGIN
                                || letter.getYDirAdj() - letter.getHeightDir() < MARGIN))
                .toList();
    }

    long pagesThatBeginASheet() {
        return texts.stream()
                .filter(text -> text.strip().startsWith("Cutting test"))
                .count();
    }

    /** Rows of the table of what was weighed that are on no page with all their figures on one line. */
    List<String> rowsNotWhole(SheetReport report) {
        List<String> lines = texts.stream().flatMap(String::lines).toList();
        List<String> missing = new ArrayList<>();
        for (PartComparison part : report.weighed()) {
            String name = PartNames.address(report.test().plan(), part.node());
            String figures = Written.kilograms(part.weighed().mean()) + " "
                    + Written.kilograms(part.expected().mean()) + " " + Written.more(part.difference());
            String last = name.substring(name.lastIndexOf('/') + 1).strip();
            boolean isShort = name.length() < 40;
            if (lines.stream().noneMatch(line -> line.contains(figures) && (!isShort || line.contains(last)))) {
                missing.add(name + " " + figures);
            }
        }
        return missing;
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
    }
}
