package dev.gambrel.batches.sheets;

import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.Specification;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.cuttingtest.Scale;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads the heading of a sheet and holds it against its specification. */
final class SheetHeadingReader {
    private static final Pattern REVISION = Pattern.compile("[0-9]{1,9}");
    private static final Pattern PER_CENT = Pattern.compile("([0-9]{1,2}(?:\\.[0-9]{1,6})?)\\s*%");
    private static final double HUNDRED = 100;
    private static final int MOST_SCALES = 100;
    private static final int MOST_NAMED = 6;

    private final SheetForm form;
    private final Specification specification;
    private final Place file;
    private final Consumer<Diagnostic> findings;
    private final Map<HeadingLine, SheetRow> lines = new EnumMap<>(HeadingLine.class);
    private final List<Scale> scales = new ArrayList<>();
    private final Map<String, Place> scaleLines = new HashMap<>();

    SheetHeadingReader(SheetForm form, Specification specification, Place file, Consumer<Diagnostic> findings) {
        this.form = form;
        this.specification = specification;
        this.file = file;
        this.findings = findings;
    }

    /** The heading; nothing, and why, if it cannot be used. */
    Optional<SheetHeading> read(List<SheetRow> rows) {
        rows.forEach(this::take);
        for (HeadingLine line : HeadingLine.values()) {
            if (line.isNeeded() && !lines.containsKey(line)) {
                findings.accept(Diagnostic.of(SheetCode.LINE_MISSING, file)
                        .with("what", line.what())
                        .help(form.toAdd(line)));
            }
        }
        checkSpecification();
        checkRevision();
        return scales.isEmpty() ? Optional.empty() : carcass();
    }

    private void take(SheetRow row) {
        Cell word = row.cell(0);
        Optional<HeadingLine> line = HeadingLine.of(word.written());
        if (line.isEmpty()) {
            findings.accept(Diagnostic.of(SheetCode.UNKNOWN_LINE, word.place())
                    .with("word", word.written())
                    .help(HeadingLine.advice(word.written())));
            return;
        }
        SheetRow first = lines.putIfAbsent(line.get(), row);
        if (line.get() == HeadingLine.SCALE) {
            scale(row).ifPresent(scale -> add(scale, row));
        } else if (first != null) {
            twice(row, line.get().what(), first.place());
        }
    }

    private void twice(SheetRow row, String what, Place first) {
        findings.accept(Diagnostic.of(SheetCode.LINE_TWICE, row.place())
                .with("what", what)
                .related(first, "the first")
                .help("Leave one of the two."));
    }

    private void add(Scale scale, SheetRow row) {
        Place first = scaleLines.putIfAbsent(scale.name().toLowerCase(Locale.ROOT), row.place());
        if (first == null && scales.size() == MOST_SCALES) {
            findings.accept(
                    unreadable(row.cell(1), "scale beyond the hundredth", "no more than " + MOST_SCALES + " scales"));
        } else if (first == null) {
            scales.add(scale);
        } else {
            twice(row, "what the scale “" + scale.name() + "” is like", first);
        }
    }

    private Optional<Scale> scale(SheetRow row) {
        Optional<Double> division = kilograms(row.cell(2), "division of the scale");
        Optional<Double> tare = kilograms(row.cell(3), "tare error of the scale");
        Optional<Double> calibration = calibration(row.cell(4));
        if (!TradeName.isAcceptable(row.cell(1).written())) {
            findings.accept(unreadable(row.cell(1), "name of the scale", "a name such as bench"));
            return Optional.empty();
        }
        return division.flatMap(step -> tare.flatMap(
                error -> calibration.map(part -> new Scale(row.cell(1).written(), step, part, error))));
    }

    private Optional<Double> kilograms(Cell cell, String what) {
        Optional<Double> read = WrittenWeight.whole(cell.written()).map(Quantity::value);
        if (read.isEmpty()) {
            findings.accept(unreadable(cell, what, "a weight with its unit, such as 5 g,"));
        }
        return read;
    }

    private Optional<Double> calibration(Cell cell) {
        var written = PER_CENT.matcher(cell.written());
        if (cell.isEmpty()) {
            return Optional.of(0.0);
        } else if (written.matches()) {
            return Optional.of(Double.parseDouble(written.group(1)) / HUNDRED);
        }
        findings.accept(unreadable(cell, "calibration error of the scale", "a share such as 0.1 %"));
        return Optional.empty();
    }

    private static Diagnostic unreadable(Cell cell, String line, String wanted) {
        return Diagnostic.of(SheetCode.LINE_UNREADABLE, cell.place())
                .with("line", line)
                .with("value", cell.written())
                .with("wanted", wanted);
    }

    private void checkSpecification() {
        Optional.ofNullable(lines.get(HeadingLine.SPECIFICATION))
                .map(row -> row.cell(1))
                .filter(title -> !isSame(title.written(), specification.title()))
                .ifPresent(title -> findings.accept(Diagnostic.of(SheetCode.OTHER_SPECIFICATION, title.place())
                        .with("found", title.written())
                        .with("wanted", specification.title())
                        .help("Name the specification by which was cut, or put the name on the sheet right.")));
    }

    private static boolean isSame(String one, String other) {
        return one.equals(other)
                || TradeName.isAcceptable(one)
                        && TradeName.isAcceptable(other)
                        && TradeName.of(one).equals(TradeName.of(other));
    }

    private void checkRevision() {
        Optional.ofNullable(lines.get(HeadingLine.REVISION))
                .map(row -> row.cell(1))
                .ifPresent(this::checkRevision);
    }

    private void checkRevision(Cell revision) {
        if (!REVISION.matcher(revision.written()).matches()) {
            findings.accept(unreadable(revision, "revision", "a whole number"));
        } else if (Integer.parseInt(revision.written()) != specification.revision()) {
            findings.accept(Diagnostic.of(SheetCode.OTHER_REVISION, revision.place())
                    .with("found", Integer.parseInt(revision.written()))
                    .with("wanted", specification.revision())
                    .help("Hold the sheet against the revision by which was cut: another may expect other shares."));
        }
    }

    private Optional<SheetHeading> carcass() {
        return Optional.ofNullable(lines.get(HeadingLine.CARCASS)).flatMap(row -> {
            Optional<Quantity> mass =
                    WrittenWeight.whole(row.cell(1).written()).filter(SheetHeadingReader::isSomething);
            if (mass.isEmpty()) {
                findings.accept(unreadable(row.cell(1), "carcass", "its weight with its unit, such as 22.40 kg,"));
            }
            Optional<Basis> basis = Basis.of(row.cell(2).written());
            if (basis.isEmpty()) {
                findings.accept(unreadable(row.cell(2), "basis of the carcass", "live, in skin, warm or cold"));
            }
            Optional<Scale> scale = scale(row.cell(3), "The carcass", scales, findings);
            return mass.flatMap(weight ->
                    basis.flatMap(on -> scale.map(used -> heading(new CarcassWeight(weight, on), used))));
        });
    }

    private static boolean isSomething(Quantity weight) {
        return weight.amount().compareTo(BigDecimal.ZERO) > 0 && weight.unit().dimension() == Unit.KILOGRAM.dimension();
    }

    private SheetHeading heading(CarcassWeight carcass, Scale scale) {
        return new SheetHeading(
                said(HeadingLine.DATE), said(HeadingLine.LOT), said(HeadingLine.CUTTER), scales, carcass, scale);
    }

    private String said(HeadingLine line) {
        return lines.containsKey(line) ? lines.get(line).cell(1).written() : "";
    }

    List<Scale> scales() {
        return scales;
    }

    /** The line of the carcass; the file where there is none. */
    Place carcassLine() {
        return lines.containsKey(HeadingLine.CARCASS)
                ? lines.get(HeadingLine.CARCASS).place()
                : file;
    }

    /** On which scale something was weighed: the only one need not be named, and that there is none is told once. */
    static Optional<Scale> scale(Cell cell, String what, List<Scale> scales, Consumer<Diagnostic> findings) {
        if (scales.isEmpty()) {
            return Optional.empty();
        } else if (cell.isEmpty() && scales.size() == 1) {
            return Optional.of(scales.get(0));
        } else if (cell.isEmpty()) {
            findings.accept(Diagnostic.of(SheetCode.NO_SCALE, cell.place())
                    .with("what", what)
                    .with("count", scales.size())
                    .help("Name it: " + names(scales) + "."));
            return Optional.empty();
        }
        Optional<Scale> found = scales.stream()
                .filter(scale -> scale.name().equalsIgnoreCase(cell.written()))
                .findFirst();
        if (found.isEmpty()) {
            findings.accept(Diagnostic.of(SheetCode.OTHER_SCALE, cell.place())
                    .with("scale", cell.written())
                    .help("Add a line for it to the heading; it has: " + names(scales) + "."));
        }
        return found;
    }

    private static String names(List<Scale> scales) {
        int more = scales.size() - MOST_NAMED;
        String first = scales.stream().limit(MOST_NAMED).map(Scale::name).collect(Collectors.joining(", "));
        return more > 0 ? first + " and " + more + " more" : first;
    }
}
