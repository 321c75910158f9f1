package dev.gambrel.batches.sheets;

import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.cuttingtest.PartReading;
import dev.gambrel.yields.cuttingtest.Scale;
import dev.gambrel.yields.cuttingtest.Weighing;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Node;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** Reads the rows of the table of a sheet, one part to each. */
final class PartRowReader {
    private static final Pattern WEIGHINGS = Pattern.compile("[1-9][0-9]{0,2}");
    private static final double FITS = 3;
    private static final double DOES_NOT_FIT = 5;

    private final SheetColumns columns;
    private final ExpectedYields expected;
    private final List<Scale> scales;
    private final Place carcassLine;
    private final PlanParts parts;
    private final WrittenWeight weights;
    private final Consumer<Diagnostic> findings;
    private final Map<Integer, Place> rows = new HashMap<>();

    PartRowReader(
            SheetColumns columns,
            ExpectedYields expected,
            List<Scale> scales,
            Place carcassLine,
            Consumer<Diagnostic> findings) {
        this.columns = columns;
        this.expected = expected;
        this.scales = scales;
        this.carcassLine = carcassLine;
        this.parts = new PlanParts(expected.plan(), findings);
        this.weights = new WrittenWeight(findings);
        this.findings = findings;
    }

    /** The reading of a row; nothing, and why, if something in it cannot be taken. */
    Optional<PartReading> read(SheetRow row) {
        if (!columns.hold(row, findings)) {
            return Optional.empty();
        }
        Optional<PlanParts.Named> part = parts.find(columns.part(row)).filter(named -> isFirst(named, row));
        Optional<Integer> weighings = weighings(columns.weighings(row));
        Optional<Scale> scale = SheetHeadingReader.scale(columns.scale(row), "The part", scales, findings);
        Optional<BigDecimal> kilograms = net(row);
        return part.flatMap(named -> Pieces.factor(columns.pieces(row), node(named), findings)
                .flatMap(factor -> kilograms.flatMap(net -> scale.flatMap(on -> weighings.map(
                        times -> reading(named, net.doubleValue(), factor, on, times, columns.gross(row)))))));
    }

    private Node node(PlanParts.Named named) {
        return expected.plan().node(named.node());
    }

    private boolean isFirst(PlanParts.Named named, SheetRow row) {
        boolean isCarcass = named.node() == expected.plan().carcass();
        Place first = isCarcass
                ? carcassLine
                : rows.putIfAbsent(named.node(), columns.part(row).place());
        if (first != null) {
            findings.accept(Diagnostic.of(
                            SheetCode.PART_TWICE, columns.part(row).place())
                    .with("part", PlanParts.called(node(named)))
                    .related(first, isCarcass ? "the carcass stands in the heading" : "the first row")
                    .help("Leave one of the two; what was weighed in several goes is one row with the sum, and their"
                            + " number in a column “weighings”."));
        }
        return first == null;
    }

    private Optional<Integer> weighings(Cell cell) {
        if (cell.isEmpty()) {
            return Optional.of(1);
        } else if (WEIGHINGS.matcher(cell.written()).matches()) {
            return Optional.of(Integer.parseInt(cell.written()));
        }
        findings.accept(Diagnostic.of(SheetCode.WEIGHINGS, cell.place())
                .with("value", cell.written())
                .help("Write how often the scale was used for the part; nothing for once."));
        return Optional.empty();
    }

    private Optional<BigDecimal> net(SheetRow row) {
        Optional<BigDecimal> gross = weights.figure(columns.gross(row), "gross weight");
        Optional<BigDecimal> tare = weights.figure(columns.tare(row), "tare");
        Optional<Unit> unit = weights.unit(columns.unit(row));
        return gross.flatMap(all -> tare.flatMap(of -> {
            if (all.compareTo(of) < 0) {
                findings.accept(Diagnostic.of(
                                SheetCode.BELOW_TARE, columns.gross(row).place())
                        .with("gross", all.toPlainString())
                        .with("tare", of.toPlainString())
                        .help("Look whether the two are in each other's column, or the weight is net already: then the"
                                + " tare is 0."));
                return Optional.empty();
            }
            return unit.map(in -> in.toCommon(all.subtract(of)));
        }));
    }

    /** Pieces that were not weighed are taken to weigh like those that were, and to have been weighed as well and as badly. */
    private PartReading reading(PlanParts.Named named, double net, double factor, Scale scale, int times, Cell gross) {
        double kilograms = net * factor;
        askForPounds(named, kilograms, gross);
        double root = Math.sqrt(factor);
        Scale scaled = factor == 1
                ? scale
                : new Scale(scale.name(), scale.division() * root, scale.proportional(), scale.tare() * root);
        int all = (int) Math.max(times, Math.round(times * factor));
        return new PartReading(node(named).path(), named.state(), List.of(new Weighing(scaled, kilograms, all)));
    }

    /** Asked only where pounds fit what is expected and kilograms do not, by standard deviations of the specification. */
    private void askForPounds(PlanParts.Named named, double kilograms, Cell gross) {
        Estimate weight = expected.plan()
                .weight(named.node())
                .times(expected.given().mass().value());
        double deviation = Math.sqrt(weight.spread().variance());
        double inPounds = kilograms * Unit.POUND.factor().doubleValue();
        boolean isAsked = expected.plan().isStated(named.node())
                && Math.abs(kilograms - weight.mean()) > DOES_NOT_FIT * deviation
                && Math.abs(inPounds - weight.mean()) <= FITS * deviation;
        if (isAsked) {
            findings.accept(Diagnostic.of(SheetCode.PERHAPS_POUNDS, gross.place())
                    .with("part", PlanParts.called(node(named)))
                    .with("found", shown(kilograms, Unit.KILOGRAM))
                    .with("expected", shown(weight.mean(), Unit.KILOGRAM))
                    .with("pounds", shown(kilograms, Unit.POUND))
                    .help("It is taken as written. If it was pounds, write lb in its unit."));
        }
    }

    private static Quantity shown(double amount, Unit unit) {
        return new Quantity(BigDecimal.valueOf(amount).setScale(3, RoundingMode.HALF_EVEN), unit);
    }
}
