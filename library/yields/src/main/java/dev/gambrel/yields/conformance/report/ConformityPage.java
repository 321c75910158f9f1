package dev.gambrel.yields.conformance.report;

import dev.gambrel.yields.conformance.report.ConformitySheet.Line;
import dev.gambrel.yields.conformance.report.ConformitySheet.Product;
import dev.gambrel.yields.conformance.report.ConformitySheet.Told;
import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A sheet as a page to be printed and signed: HTML that is well-formed XML, stands alone, holds no script and fetches nothing. All
 * escaping is that of the XML writer.
 */
public final class ConformityPage {
    private static final String STYLE = """

            @page { size: A4; margin: 15mm; }
            body { font: 10pt/1.35 sans-serif; color: #000; background: #fff; max-width: 180mm; margin: 0 auto; }
            h1 { font-size: 15pt; } h2 { font-size: 12pt; margin: 6mm 0 2mm; }
            table { border-collapse: collapse; width: 100%; table-layout: fixed; }
            th, td { border: 0.3mm solid #555; padding: 1mm 1.5mm; text-align: left; vertical-align: top;
              overflow-wrap: anywhere; }
            thead { display: table-header-group; } tr, .sign { break-inside: avoid; }
            .fails, .open { font-weight: bold; } .where { color: #444; font-size: 8.5pt; }
            .overall { border: 0.6mm solid #000; padding: 3mm; font-size: 13pt; font-weight: bold; }
            .sign td { height: 14mm; }
            """;

    private final XMLStreamWriter xml;

    private ConformityPage(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /**
     * Sets a sheet on a page.
     *
     * @param sheet the sheet
     * @param cautions lines to stand under it
     * @return the whole file, to be kept as UTF-8
     */
    public static String of(ConformitySheet sheet, List<String> cautions) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            new ConformityPage(xml).page(sheet, cautions);
            xml.close();
        } catch (XMLStreamException cannotHappenInMemory) {
            throw new IllegalStateException(cannotHappenInMemory);
        }
        return out.append('\n').toString();
    }

    private void page(ConformitySheet sheet, List<String> cautions) throws XMLStreamException {
        xml.writeDTD("<!DOCTYPE html>");
        xml.writeCharacters("\n");
        xml.writeStartElement("html");
        xml.writeAttribute("lang", "en");
        xml.writeStartElement("head");
        xml.writeEmptyElement("meta");
        xml.writeAttribute("charset", "UTF-8");
        element("title", "Conformity: " + sheet.house() + " to " + sheet.buyer());
        element("style", STYLE);
        xml.writeEndElement();
        xml.writeStartElement("body");
        element("h1", "Conformity, clause by clause");
        element("p", "House: " + sheet.house());
        element("p", "Buyer: " + sheet.buyer());
        for (Product product : sheet.products()) {
            product(product);
        }
        end(sheet, cautions);
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void product(Product product) throws XMLStreamException {
        element("h2", product.asked() + (product.matched().isEmpty() ? "" : ", matched to " + product.matched()));
        for (Told finding : product.findings()) {
            element("p", finding.sentence());
            for (String help : finding.help()) {
                element("p", help);
            }
            styled("p", "where", where(finding));
        }
        if (product.lines().isEmpty()) {
            return;
        }
        xml.writeStartElement("table");
        xml.writeStartElement("thead");
        row("th", List.of("Verdict", "About", "Asked", "The house lays down", "Margin"));
        xml.writeEndElement();
        xml.writeStartElement("tbody");
        for (Line line : product.lines()) {
            line(line);
        }
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private void line(Line line) throws XMLStreamException {
        xml.writeStartElement("tr");
        styled(
                "td",
                switch (line.verdict()) {
                    case MEETS -> "meets";
                    case FAILS -> "fails";
                    case NOT_STATED -> "open";
                },
                line.verdict().words());
        for (String cell : List.of(line.about(), line.asked(), line.held(), line.margin())) {
            element("td", cell);
        }
        xml.writeEndElement();
        xml.writeStartElement("tr");
        xml.writeStartElement("td");
        xml.writeAttribute("colspan", "5");
        element("div", line.why().sentence());
        for (String sentence : line.expected()) {
            element("div", sentence);
        }
        styled("div", "where", where(line.why()));
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private static String where(Told told) {
        String house = told.house().isEmpty() ? "" : "; house: " + String.join(", ", told.house());
        return "buyer: " + told.buyer() + house + " (" + told.code() + ")";
    }

    private void end(ConformitySheet sheet, List<String> cautions) throws XMLStreamException {
        element("h2", "Answer");
        element("p", sheet.counts());
        styled("p", "overall", "Overall: " + sheet.overall().words() + ".");
        xml.writeStartElement("table");
        xml.writeAttribute("class", "sign");
        xml.writeStartElement("tbody");
        row("th", List.of("For", "Name", "Signature", "Date"));
        row("td", List.of("The house", "", "", ""));
        row("td", List.of("The buyer", "", "", ""));
        xml.writeEndElement();
        xml.writeEndElement();
        for (String caution : cautions) {
            element("p", caution);
        }
    }

    private void row(String cell, List<String> cells) throws XMLStreamException {
        xml.writeStartElement("tr");
        for (String text : cells) {
            element(cell, text);
        }
        xml.writeEndElement();
    }

    private void styled(String name, String style, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeAttribute("class", style);
        xml.writeCharacters(text);
        xml.writeEndElement();
    }

    private void element(String name, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeCharacters(text);
        xml.writeEndElement();
    }
}
