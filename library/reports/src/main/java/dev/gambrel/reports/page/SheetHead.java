package dev.gambrel.reports.page;

import dev.gambrel.batches.sheets.SheetHeading;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.reports.markup.Markup;
import dev.gambrel.tree.Specification;
import dev.gambrel.yields.cuttingtest.Scale;
import java.util.stream.Collectors;

/** Whose sheet it is: specification, date, lot, cutter, carcass, scales. */
final class SheetHead {
    private final Markup out;

    SheetHead(Markup out) {
        this.out = out;
    }

    void write(WeighSheet sheet) {
        SheetHeading heading = sheet.heading();
        Specification specification = sheet.expected().tree().specification();
        out.open("dl", "class", "heading");
        entry("Specification", specification.title() + ", revision " + specification.revision());
        entry(
                "Carcass",
                heading.carcass().mass() + " " + heading.carcass().basis().words());
        entry("Date", heading.date());
        entry("Lot", heading.lot());
        entry("Cutter", heading.cutter());
        entry("Scales", heading.scales().stream().map(Scale::name).collect(Collectors.joining(", ")));
        out.close();
    }

    private void entry(String word, String value) {
        if (!value.isEmpty()) {
            out.element("dt", word);
            out.open("dd").element("bdi", value).close();
        }
    }
}
