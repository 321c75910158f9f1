package dev.gambrel.cli.number.report;

import dev.gambrel.cli.number.report.NumberReport.Row;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.references.gs1.Element;
import dev.gambrel.references.gs1.ElementString;
import dev.gambrel.references.gs1.Form;
import dev.gambrel.references.gs1.Gs1Date;
import dev.gambrel.references.gs1.Gtin;
import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import dev.gambrel.references.unece.MeatCodes;
import dev.gambrel.text.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** What stands in the element string of a label. */
public final class LabelReport {
    private static final String CAUTION =
            "This tells what the code says, not whether goods are past a date or weigh what they"
                    + " should: look at the label and weigh, and follow local law on dates and weights.";
    private static final Citation DICTIONARY =
            new Citation("GS1 Barcode Syntax Dictionary, GS1 AISBL", "edition not stated", Certainty.SEEN);
    private static final Citation DATES = new Citation(
            "GS1 General Specifications, section 7.12, century of a date and day 00",
            "edition not known",
            Certainty.FROM_MEMORY);

    private static final int NOT_SAID = 0;

    private final int reading;
    private final List<Row> rows = new ArrayList<>();
    private final List<Citation> sources = new ArrayList<>(List.of(DICTIONARY));
    private final List<String> notes = new ArrayList<>();

    private LabelReport(int reading) {
        this.reading = reading;
    }

    /**
     * What a label says.
     *
     * @param label its elements
     * @param reading the year in which it is read, which tells the century of dates; without it none is told
     * @return a row for each element, and for each field of a meat code
     */
    public static NumberReport of(ElementString label, OptionalInt reading) {
        LabelReport report = new LabelReport(reading.orElse(NOT_SAID));
        label.elements().forEach(report::element);
        return new NumberReport(
                "GS1 element string", label.bracketed(), report.rows, report.notes, report.sources, CAUTION);
    }

    /**
     * What a number of a trade item says.
     *
     * @param gtin the number
     * @return one row
     */
    public static NumberReport of(Gtin gtin) {
        Row row = new Row("", "GTIN-" + gtin.digits().length(), gtin.digits(), item(gtin));
        return new NumberReport("GS1 trade item", gtin.digits(), List.of(row), List.of(), List.of(DICTIONARY), "");
    }

    private void element(Element element) {
        rows.add(
                new Row("(" + element.digits() + ")", element.identifier().title(), element.value(), meaning(element)));
        if (element.identifier().pattern().equals("7002")) {
            MeatCodes.decode(new SourceText("(7002)", element.value())).value().ifPresent(code -> {
                NumberReport meat = MeatCodeReport.of(code);
                meat.rows()
                        .forEach(row ->
                                rows.add(new Row("  " + row.position(), row.what(), row.value(), row.meaning())));
                sources.addAll(meat.sources());
                notes.addAll(meat.notes());
            });
        }
    }

    private String meaning(Element element) {
        Form form = element.identifier().form();
        if (element.date().isPresent()) {
            return date(element.date().get()) + rest(element);
        }
        return switch (form) {
            case GTIN -> item(new Gtin(element.value()));
            case SSCC -> "check digit right";
            case MEASURE -> element.weight().map(Quantity::toString).orElse("");
            case COUNT -> element.value().replaceFirst("^0+(?=.)", "") + " pieces";
            default -> "";
        };
    }

    private static String rest(Element element) {
        String value = element.value();
        return switch (element.identifier().form()) {
            case DATE_AND_TIME -> ", " + value.substring(6, 8) + ":" + value.substring(8);
            case DATES -> value.length() == 6 ? "" : ", the first of two days";
            default -> "";
        };
    }

    private String date(Gs1Date date) {
        sources.add(DATES);
        if (reading == NOT_SAID) {
            notes.add("The century of a date follows from the year in which it is read: give --year to have it told.");
            return date.toString();
        }
        String day = date.in(reading).map(Object::toString).orElse("29 February of a year that has none");
        return day + (date.isMonth() ? ", the last day of the month since none is given" : "");
    }

    private static String item(Gtin gtin) {
        return gtin.isVaryingMeasure() ? "check digit right, item of varying measure" : "check digit right";
    }
}
