package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.batches.sheets.SheetHeading;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.reports.page.CuttingTestPage;
import dev.gambrel.reports.picture.CutTreePicture;
import dev.gambrel.reports.picture.GramsPicture;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.cuttingtest.Scale;
import dev.gambrel.yields.working.Working;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Whatever stands on a sheet, its page holds it as text and nothing else comes of it. */
class CuttingTestPageLaws {
    private static final Path EXAMPLES = Path.of(System.getProperty("basedir", ""), "..", "examples");
    private static final CutTree HOGGET = new SpecCompiler()
            .compile(EXAMPLES.resolve("marram").resolve("hogget.cuts"))
            .orElseThrow()
            .tree();
    private static final Set<String> ELEMENTS = Set.of(
            "html",
            "head",
            "meta",
            "title",
            "style",
            "body",
            "section",
            "h1",
            "h2",
            "p",
            "strong",
            "dl",
            "dt",
            "dd",
            "bdi",
            "ol",
            "li",
            "table",
            "thead",
            "tbody",
            "tr",
            "th",
            "td",
            "figure",
            "footer",
            "svg",
            "desc",
            "rect",
            "polygon",
            "polyline",
            "circle",
            "text");
    private static final Set<String> ATTRIBUTES = Set.of(
            "lang",
            "charset",
            "class",
            "role",
            "scope",
            "xmlns",
            "viewBox",
            "width",
            "height",
            "aria-label",
            "font-family",
            "x",
            "y",
            "cx",
            "cy",
            "r",
            "points",
            "fill",
            "stroke",
            "stroke-width",
            "stroke-dasharray",
            "text-anchor",
            "font-size",
            "font-weight",
            "textLength",
            "lengthAdjust");

    private static SheetReport report(int number) {
        String name = "hogget-" + (number < 10 ? "0" : "") + number + ".csv";
        try {
            String text = Files.readString(EXAMPLES.resolve("weigh-sheets").resolve(name));
            return SheetReport.of(WeighSheet.read(new SourceText(name, text), HOGGET, Working.AS_WRITTEN)
                    .orElseThrow());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** As if a stranger had written all of the heading. */
    private static SheetReport written(String words) {
        WeighSheet sheet = report(5).sheet();
        SheetHeading heading = sheet.heading();
        return SheetReport.of(new WeighSheet(
                words,
                new SheetHeading(
                        words,
                        words,
                        words,
                        List.of(new Scale(words, 0.005, 0, 0)),
                        heading.carcass(),
                        heading.carcassScale()),
                sheet.expected(),
                sheet.readings()));
    }

    private static Document parsed(String page) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> values(Document page, String element) {
        List<String> values = new ArrayList<>();
        NodeList found = page.getElementsByTagName(element);
        for (int i = 0; i < found.getLength(); i++) {
            values.add(found.item(i).getTextContent());
        }
        return values;
    }

    @Provide
    Arbitrary<String> hostile() {
        Arbitrary<String> pieces = Arbitraries.of(
                "<script>alert(1)</script>",
                "</style>",
                "</text></svg>",
                "<img src=x onerror=alert(1)>",
                "]]>",
                "<!--",
                "&amp;&#x3c;",
                "javascript:alert(1)",
                "\" onload=\"alert(1)",
                "' style='x",
                "\u202e\u2066\u200b",
                "\u0000\u0007\u001b[2J",
                "\ud800",
                "\ufffe\uffff",
                "w".repeat(10_000),
                "羊腿 שוק كتف");
        return Arbitraries.oneOf(pieces, Arbitraries.strings().ofMaxLength(30))
                .list()
                .ofMinSize(1)
                .ofMaxSize(4)
                .map(list -> String.join(" ", list))
                .filter(words -> !words.isEmpty());
    }

    @Property(tries = 60)
    void words_of_a_stranger_are_text_and_none_of_it_is_missing(@ForAll("hostile") String words) throws Exception {
        String html = CuttingTestPage.of(List.of(written(words)), List.of(words));
        Document page = parsed(html);
        NodeList all = page.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            assertTrue(ELEMENTS.contains(element.getTagName()), element.getTagName());
            for (int a = 0; a < element.getAttributes().getLength(); a++) {
                Node attribute = element.getAttributes().item(a);
                assertTrue(ATTRIBUTES.contains(attribute.getNodeName()), attribute.getNodeName());
            }
        }
        String seen = Visible.text(words);
        assertEquals(4, values(page, "dd").stream().filter(seen::equals).count(), "date, lot, cutter, scale");
        assertEquals(List.of("Cutting test " + seen), values(page, "h1"));
        assertTrue(values(page, "p").contains(seen), "cautions");
        assertTrue(html.codePoints().noneMatch(c -> c != '\n' && Visible.isHidden(c)), "nothing steers or hides");
    }

    /** HTML does not read what XML escapes within a style. */
    @Property(tries = 1)
    void the_style_is_the_same_as_html_and_as_xml() {
        String html = CuttingTestPage.of(List.of(report(1)), List.of());
        String style = html.substring(html.indexOf("<style>") + 7, html.indexOf("</style>"));
        assertFalse(style.contains("&") || style.contains("<") || style.contains("url("), style);
        assertTrue(style.contains("size: A4"), style);
    }

    @Property(tries = 12)
    void the_same_sheet_gives_the_same_bytes(@ForAll @IntRange(min = 1, max = 12) int number) {
        assertEquals(
                CuttingTestPage.of(List.of(report(number)), List.of("care")),
                CuttingTestPage.of(List.of(report(number)), List.of("care")));
    }

    /** The last figures of the picture are the sums: as much is expected as came out, and nothing is left over. */
    @Property(tries = 12)
    void grams_add_up_as_they_are_shown(@ForAll @IntRange(min = 1, max = 12) int number) throws Exception {
        List<String> words = values(parsed(GramsPicture.of(report(number)).svg()), "text");
        List<List<String>> rows = new ArrayList<>();
        for (int i = 5; i < words.size(); i += 4) {
            rows.add(words.subList(i, i + 4));
        }
        List<String> total = rows.get(rows.size() - 1);
        assertEquals("all", total.get(0));
        for (int column = 1; column < 4; column++) {
            long sum = 0;
            for (List<String> row : rows.subList(0, rows.size() - 1)) {
                sum += Long.parseLong(row.get(column));
            }
            assertEquals(Long.parseLong(total.get(column)), sum);
        }
        assertEquals("0", total.get(3));
        assertEquals(total.get(1), total.get(2));
    }

    /** Beyond chance lies what lies beyond it by the table too; of the twelve sheets those with a mistake have most. */
    @Property(tries = 12)
    void every_part_that_was_weighed_has_a_row(@ForAll @IntRange(min = 1, max = 12) int number) {
        SheetReport report = report(number);
        List<String> told = CutTreePicture.of(report).rows().stream()
                .map(row -> row.description())
                .filter(row -> row.contains(": expected") && row.contains("; weighed "))
                .toList();
        assertEquals(report.weighed().size(), told.size(), told.toString());
        long marked = told.stream()
                .filter(row -> row.endsWith("than chance explains"))
                .count();
        assertTrue(number == 5 ? marked > 20 : marked < 3, told.toString());
    }
}
