package dev.gambrel.reports.page;

import dev.gambrel.reports.markup.Markup;
import java.util.List;
import java.util.function.Consumer;

/** What every page has: its look on a screen and on A4, and the cautions at its foot. */
final class PageFrame {
    private static final String STYLE = """

            @page { size: A4; margin: 15mm 14mm; }
            body { font: 10pt/1.4 sans-serif; color: #1c1c1c; background: #fff; max-width: 182mm; margin: 0 auto; padding: 0 3mm; }
            h1 { font-size: 15pt; margin: 4mm 0 1mm; } h2 { font-size: 11.5pt; margin: 6mm 0 1.5mm; break-after: avoid; }
            h1, p, li, td, th, dd { overflow-wrap: anywhere; }
            svg { display: block; max-width: 100%; height: auto; }
            section { break-before: page; } section:first-of-type { break-before: auto; }
            table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
            thead { display: table-header-group; } tr, figure, .verdict { break-inside: avoid; }
            .picture td, .picture th { padding: 0; font-weight: normal; } figure { margin: 0; }
            .figures { font-size: 9pt; } .figures th, .figures td { vertical-align: top; border-bottom: 0.2mm solid #b4b4b4; padding: 0.4mm 1.5mm; }
            .figures thead th { border-bottom: 0.3mm solid #1c1c1c; font-weight: normal; color: #555; vertical-align: bottom; }
            .figures th { text-align: left; font-weight: normal; }
            .figures td, .figures thead th + th { text-align: right; white-space: nowrap; overflow-wrap: normal; }
            .heading { display: grid; grid-template-columns: max-content 1fr; gap: 0 4mm; margin: 0; }
            dt { color: #555; } dd { margin: 0; }
            .verdict { border: 0.5mm solid #1c1c1c; padding: 2mm 3mm; margin: 3mm 0; }
            .verdict strong { display: block; font-size: 14pt; }
            .wrong { border-width: 1mm; } li:first-child { font-weight: bold; } ol { margin: 0; padding-left: 6mm; }
            .more { padding-left: 5mm; } p { margin: 1.5mm 0; }
            .note { color: #555; font-size: 9pt; } footer { margin-top: 6mm; break-inside: avoid; }
            """;

    private PageFrame() {}

    static String of(String title, List<String> cautions, Consumer<Markup> body) {
        return Markup.of(out -> {
            out.doctype().open("html", "lang", "en").open("head");
            out.empty("meta", "charset", "UTF-8");
            out.element("title", title);
            out.style(STYLE);
            out.close().open("body");
            body.accept(out);
            out.open("footer");
            cautions.forEach(line -> out.element("p", line));
            out.close().close().close();
        });
    }
}
