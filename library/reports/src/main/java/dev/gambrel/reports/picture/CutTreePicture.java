package dev.gambrel.reports.picture;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.yields.reconciliation.error.Sidak;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The cut tree of a test, a line for each part: what was expected with the range that chance keeps to, and what came out.
 *
 * @param key what the signs mean
 * @param heading of the columns
 * @param rows one strip for each line, in order
 */
public record CutTreePicture(Picture key, Picture heading, List<Picture> rows) {
    private static final String TITLE = "The cut tree: what was expected, and what came out";

    /** Copies the list. */
    public CutTreePicture {
        rows = List.copyOf(rows);
    }

    /**
     * Draws a test. A part is marked where its weight is further from what was expected than chance makes any part of a sheet, but in
     * {@link SheetReport#LEVEL} of sheets.
     *
     * @param report what is said of the sheet
     * @return the picture in strips, so that a page can end between any two
     */
    public static CutTreePicture of(SheetReport report) {
        List<TreeRow> lines = TreeRows.of(
                report.test(),
                report.weighed(),
                report.sheet().heading().carcass().mass().value());
        int tests = (int) report.weighed().stream()
                .map(part -> part.z())
                .filter(OptionalDouble::isPresent)
                .count();
        double critical = Sidak.critical(Math.max(1, tests), SheetReport.LEVEL);
        TreeStrips strips = new TreeStrips(lines, critical);
        Picture key = strips.key(tests);
        Picture heading = strips.heading();
        List<Picture> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            rows.add(strips.row(i));
        }
        return new CutTreePicture(key, heading, rows);
    }

    /**
     * All of it on one sheet.
     *
     * @return the picture, as high as the tree is large
     */
    public Picture whole() {
        List<Picture> strips = new ArrayList<>(List.of(key, heading));
        strips.addAll(rows);
        return Picture.of(TITLE, key.description(), strips);
    }
}
