package dev.gambrel.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.reports.picture.CutTreePicture;
import dev.gambrel.reports.picture.GramsPicture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of a cutting test as a browser shows it, on a screen and as wide as A4. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesInABrowserTest {
    private static final int SCREEN = 1280;
    private static final int A4 = 794;

    @TempDir
    Path folder;

    private Browser browser;

    @BeforeAll
    void open(@TempDir Path profile) {
        browser = Browser.open(profile);
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private List<SheetReport> reports(String which) {
        return switch (which) {
            case "all" -> Pages.allOfMarram();
            case "hostile" -> List.of(Pages.hostile());
            case "large" -> List.of(Pages.large(folder));
            default -> List.of(Pages.marram(which));
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"01", "05", "09", "hostile", "large"})
    void words_are_to_be_read_and_nothing_runs_or_is_fetched(String which) {
        isWell(Pages.write(folder, which, reports(which)));
    }

    /** All twelve sheets, so that those with a mistake stand out and press the limits of the others together. */
    @Test
    void charts_are_to_be_read_too() throws IOException {
        Path page = Pages.drift(folder);
        isWell(page);
        browser.open(page, SCREEN);
        assertTrue((Long) browser.look("return document.querySelectorAll('svg').length") > 3, "charts");
        try (Printed printed = Printed.of(browser.print())) {
            assertEquals(List.of(), printed.pagesNotA4());
            assertEquals(List.of(), printed.emptyPages());
            assertEquals(List.of(), printed.pagesWrittenOverTheirMargin());
        }
    }

    private void isWell(Path page) {
        for (int width : new int[] {SCREEN, A4}) {
            browser.open(page, width);
            assertEquals(List.of(), browser.list(Looks.OVERLAPS), "words on one another");
            assertEquals(List.of(), browser.list(Looks.OUTSIDE), "words outside their picture");
            assertEquals(List.of(), browser.list(Looks.SIDEWAYS), "scrolls sideways");
            assertEquals(List.of(), browser.list(Looks.FAINT), "too faint");
            assertEquals(List.of(), browser.list(Looks.ACTIVE), "could run or fetch");
            assertEquals(List.of(), browser.list(Looks.UNTITLED), "without a title");
            assertEquals(List.of(), browser.complaints());
            List<String> requests = browser.requests();
            assertEquals(1, requests.size(), requests.toString());
            assertTrue(requests.get(0).contains(page.getFileName().toString()), requests.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"01", "05", "all", "large", "hostile"})
    void it_prints_on_a4_with_something_on_every_page_and_no_row_cut_in_two(String which) throws IOException {
        List<SheetReport> reports = reports(which);
        browser.open(Pages.write(folder, which, reports), SCREEN);
        try (Printed printed = Printed.of(browser.print())) {
            assertEquals(List.of(), printed.pagesNotA4());
            assertEquals(List.of(), printed.emptyPages());
            assertEquals(List.of(), printed.pagesWrittenOverTheirMargin());
            for (SheetReport report : reports) {
                assertEquals(List.of(), printed.rowsNotWhole(report));
            }
            assertEquals(reports.size(), printed.pagesThatBeginASheet(), "each sheet begins a page");
        }
    }

    @Test
    void a_picture_alone_is_shown_as_it_is_on_the_page() throws IOException {
        SheetReport report = Pages.marram("05");
        for (String svg : List.of(
                CutTreePicture.of(report).whole().svg(), GramsPicture.of(report).svg())) {
            browser.open(Files.writeString(folder.resolve("alone.svg"), svg), SCREEN);
            assertEquals(List.of(), browser.list(Looks.OVERLAPS));
            assertEquals(List.of(), browser.list(Looks.OUTSIDE));
            assertEquals(List.of(), browser.complaints());
            assertEquals(1, browser.requests().size());
        }
    }

    /** Were the looks blind, they would find nothing on this page either. */
    @Test
    void the_looks_see_what_is_wrong() throws IOException {
        String page = """
                <!DOCTYPE html><html><head></head><body style="width: 3000px"><h3 style="color: #999">faint</h3>
                <svg width="100" height="20"><text x="5" y="15">leg</text><text x="9" y="15">loin</text>
                <text x="90" y="15">outside</text></svg><a href="http://127.0.0.1:9/">away</a>
                <img src="nothing.png"></body></html>
                """;
        browser.open(Files.writeString(folder.resolve("wrong.html"), page), SCREEN);
        for (String look :
                List.of(Looks.OVERLAPS, Looks.OUTSIDE, Looks.SIDEWAYS, Looks.FAINT, Looks.ACTIVE, Looks.UNTITLED)) {
            assertFalse(browser.list(look).isEmpty(), look);
        }
        assertFalse(browser.complaints().isEmpty());
        assertEquals(2, browser.requests().size());
    }
}
