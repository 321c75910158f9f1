package dev.gambrel.cli.number.report;

import dev.gambrel.cli.number.report.NumberReport.Row;
import dev.gambrel.references.item.Item;
import dev.gambrel.references.item.Meaning;
import dev.gambrel.references.source.Citation;
import dev.gambrel.references.unece.Entry;
import dev.gambrel.references.unece.FatThickness;
import dev.gambrel.references.unece.Field;
import dev.gambrel.references.unece.MeatCode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A meat code, digit by digit. */
public final class MeatCodeReport {
    private final MeatCode code;
    private final List<Row> rows = new ArrayList<>();
    private final List<Citation> sources = new ArrayList<>();

    private MeatCodeReport(MeatCode code) {
        this.code = code;
    }

    /**
     * What a code means.
     *
     * @param code the code
     * @return a row for each field
     */
    public static NumberReport of(MeatCode code) {
        return new MeatCodeReport(code).report();
    }

    private NumberReport report() {
        rows.add(new Row("1-2", "species", code.animal().digits(), code.animal().word()));
        rows.add(new Row("3-6", "cut", code.cut(), cut()));
        rows.add(new Row("7-8", "not used", "00", ""));
        rows.add(new Row("13", "not used", "0", ""));
        for (Field field : Field.values()) {
            rows.add(new Row(
                    String.valueOf(field.position()),
                    field.words(),
                    String.valueOf(code.digits().get(field)),
                    words(code.entry(field))));
        }
        rows.sort(Comparator.comparingInt(row -> Integer.parseInt(row.position().split("-")[0])));
        List<String> notes = code.value(FatThickness.class, Field.FAT)
                .flatMap(FatThickness::limit)
                .map(limit -> List.of("That " + limit + " of fat is a limit at any point is from memory."))
                .orElse(List.of());
        return new NumberReport("UNECE meat code", code.encode(), rows, notes, sources, "");
    }

    private String words(Entry entry) {
        if (entry instanceof Entry.Meant meant) {
            sources.add(meant.citation());
            return meant.value().words();
        }
        return "not verified for " + code.animal().word();
    }

    private String cut() {
        List<Item> items = new ArrayList<>();
        if (code.meaning() instanceof Meaning.Known known) {
            items.add(known.item());
        } else if (code.meaning() instanceof Meaning.Several several) {
            items.addAll(several.items());
        }
        items.forEach(item -> sources.add(item.citation()));
        return items.isEmpty()
                ? "not held"
                : String.join(" or ", items.stream().map(ItemReport::words).toList());
    }
}
