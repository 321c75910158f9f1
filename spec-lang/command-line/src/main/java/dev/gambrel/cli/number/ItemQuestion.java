package dev.gambrel.cli.number;

import dev.gambrel.cli.number.report.ItemReport;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.references.code.ReferenceCode;
import dev.gambrel.references.item.Item;
import dev.gambrel.references.item.Meaning;
import dev.gambrel.references.item.PublishedItems;
import dev.gambrel.references.item.Reference;
import dev.gambrel.references.ranges.Placement;
import dev.gambrel.references.ranges.PublishedRanges;
import dev.gambrel.references.ranges.RangeTable;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is asked of the number of an item, and the answer. */
final class ItemQuestion {
    private final Reference reference;
    /** One, or none if that is not asked. */
    private final List<Quantity> pieces;

    private final String range;
    private final Place place;
    private final List<Diagnostic> findings = new ArrayList<>();

    /** An empty range asks for none. */
    ItemQuestion(Reference reference, Optional<Quantity> weight, String range) {
        this.reference = reference;
        this.pieces = weight.stream().toList();
        this.range = range;
        SourceText text = new SourceText("number", reference.number());
        this.place = new Place.InText(text, new Span(0, reference.number().length()));
    }

    Answer answer() {
        List<Item> items = items();
        if (items.isEmpty()) {
            return new Answer(List.of(), findings);
        }
        List<RangeTable> tables = PublishedRanges.of(reference);
        if (tables.isEmpty() && (!pieces.isEmpty() || !range.isEmpty())) {
            findings.add(of(ReferenceCode.NO_RANGES_HELD)
                    .with("scheme", reference.scheme().word())
                    .with("number", reference.number())
                    .help("Ask the buyer for the limits in words: a number alone does not tell them here."));
        }
        tables.stream()
                .filter(table -> table.citation().isFromMemory())
                .findFirst()
                .ifPresent(this::fromMemory);
        if (!tables.isEmpty()) {
            ranges(tables);
        }
        return new Answer(List.of(ItemReport.of(reference, items, tables, pieces)), findings);
    }

    private List<Item> items() {
        Meaning meaning = PublishedItems.lookUp(reference);
        if (meaning instanceof Meaning.Known known) {
            return List.of(known.item());
        } else if (meaning instanceof Meaning.Several several) {
            findings.add(named(ReferenceCode.SEVERAL_MEANINGS)
                    .with("count", several.items().size())
                    .help("Say which edition with --edition: " + editions(several.items()) + "."));
            return several.items();
        } else if (meaning instanceof Meaning.OtherEdition other) {
            findings.add(named(ReferenceCode.OTHER_EDITION)
                    .with("edition", reference.edition())
                    .help("It is held from " + editions(other.items()) + "; what another edition says may differ."));
            return List.of();
        }
        findings.add(
                named(ReferenceCode.NUMBER_NOT_HELD)
                        .help(
                                "Look at scheme and digits; it may stand in print all the same, since the tables here are not complete."));
        return List.of();
    }

    private static String editions(List<Item> items) {
        return items.stream()
                .map(item -> "“" + item.citation().edition() + "”")
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private void fromMemory(RangeTable table) {
        findings.add(of(ReferenceCode.RANGES_FROM_MEMORY)
                .with("item", table)
                .help("Look them up in print before anything rests on them."));
    }

    private void ranges(List<RangeTable> tables) {
        if (!range.isEmpty()
                && tables.stream().allMatch(table -> table.range(range).isEmpty())) {
            findings.add(of(ReferenceCode.NO_SUCH_RANGE)
                    .with("item", tables.get(0))
                    .with("range", range)
                    .help("It has " + names(tables.get(0)) + "."));
            return;
        }
        pieces.forEach(piece -> piece(tables, piece));
    }

    private void piece(List<RangeTable> tables, Quantity piece) {
        RangeTable first = tables.get(0);
        if (!range.isEmpty()) {
            if (tables.stream().noneMatch(table -> table.isIn(piece, range))) {
                findings.add(of(ReferenceCode.NOT_IN_RANGE)
                        .with("weight", piece)
                        .with("range", range)
                        .with("item", first)
                        .with("limits", first.range(range).orElseThrow().bounds())
                        .help("Sort it by its weight; the table above tells in which range it lies."));
            }
        } else if (tables.stream().allMatch(table -> table.place(piece) instanceof Placement.InNone)) {
            findings.add(of(ReferenceCode.IN_NO_RANGE)
                    .with("weight", piece)
                    .with("item", first)
                    .help("It has " + names(first) + "."));
        }
    }

    private static String names(RangeTable table) {
        return table.ranges().stream().map(Object::toString).collect(Collectors.joining(", "));
    }

    private Diagnostic of(ReferenceCode code) {
        return Diagnostic.of(code, place);
    }

    private Diagnostic named(ReferenceCode code) {
        return of(code).with("scheme", reference.scheme().word()).with("number", reference.number());
    }
}
