package dev.gambrel.batches.sheets;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.FirstFindings;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.PartReading;
import dev.gambrel.yields.cuttingtest.Weighing;
import dev.gambrel.yields.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was weighed of one carcass, as its sheet tells it.
 *
 * <pre>
 * specification,Marram house hogget
 * revision,3
 * scale,bench,5 g,1 g
 * carcass,22.40 kg,cold
 * part,pieces,gross,tare,unit
 * leg,pair,7.460,0,kg
 * topside trimmed,single,750,60,g
 * </pre>
 *
 * <p>or the same in JSON:
 *
 * <pre>
 * {"format": "gambrel weigh sheet", "version": 1, "specification": "Marram house hogget", "revision": 3,
 *  "scales": [{"name": "bench", "division": "5 g", "tare": "1 g"}], "carcass": {"weight": "22.40 kg", "basis": "cold"},
 *  "parts": [{"part": "leg", "pieces": "pair", "gross": 7.460, "tare": 0, "unit": "kg"}]}
 * </pre>
 *
 * <p>A plain name is the part as it enters the block; with "trimmed" after it, what its trims, bones and losses leave. Weights have a
 * point before the decimals and nothing between thousands. Immutable; safe between threads.
 *
 * @param name of the file
 * @param heading what stands above the table
 * @param expected what a carcass of that weight should give
 * @param readings the carcass first, then one for each row, all in kilograms without tare and for all pieces
 */
public record WeighSheet(String name, SheetHeading heading, ExpectedYields expected, List<PartReading> readings) {
    /** Copies the list. */
    public WeighSheet {
        readings = List.copyOf(readings);
    }

    /**
     * Reads a sheet. Everything that is wrong with it is told at once, each fault where it stands; a sheet with an error is not used.
     *
     * @param text the sheet as JSON where its name ends in ".json" or it begins with a bracket; else as comma-separated values, or by
     *     semicolons where its first row has one
     * @param tree the specification by which was cut
     * @param working how cuts were worked
     * @return the sheet, with what there is to ask about it
     */
    public static Result<WeighSheet> read(SourceText text, CutTree tree, Working working) {
        FirstFindings findings = new FirstFindings();
        Optional<WeighSheet> sheet = read(text, tree, working, findings);
        List<Diagnostic> found = findings.list();
        return Result.hasError(found) || sheet.isEmpty() ? Result.failed(found) : Result.of(sheet.get(), found);
    }

    private static Optional<WeighSheet> read(SourceText text, CutTree tree, Working working, FirstFindings findings) {
        SheetForm form = SheetForm.of(text);
        return form.rows(text, findings).flatMap(rows -> read(text, form, rows, tree, working, findings));
    }

    private static Optional<WeighSheet> read(
            SourceText text,
            SheetForm form,
            List<SheetRow> rows,
            CutTree tree,
            Working working,
            FirstFindings findings) {
        Place file = new Place.InFile(text.name());
        int table = SheetColumns.table(rows);
        SheetHeadingReader reader = new SheetHeadingReader(form, tree.specification(), file, findings);
        Optional<SheetHeading> heading = reader.read(rows.subList(0, table));
        if (table == rows.size()) {
            findings.accept(Diagnostic.of(SheetCode.NO_TABLE, file).help(form.toBeginTable()));
            return Optional.empty();
        } else if (table + 1 == rows.size()) {
            findings.accept(
                    Diagnostic.of(SheetCode.NOTHING_WEIGHED, rows.get(table).place())
                            .help("Write a row for each part that was weighed."));
        }
        Optional<SheetColumns> columns = SheetColumns.of(rows.get(table), findings);
        Yields yields = Yields.of(tree, working);
        Result<ExpectedYields> result =
                heading.map(head -> yields.forCarcass(head.carcass())).orElseGet(yields::forTypicalCarcass);
        result.diagnostics().forEach(found -> findings.accept(found.at(place -> reader.carcassLine())));
        return columns.flatMap(named -> result.value().flatMap(expected -> {
            PartRowReader parts = new PartRowReader(named, expected, reader.scales(), reader.carcassLine(), findings);
            List<PartReading> readings = rows.subList(table + 1, rows.size()).stream()
                    .flatMap(row -> parts.read(row).stream())
                    .toList();
            return heading.map(head -> new WeighSheet(text.name(), head, expected, all(head, readings)));
        }));
    }

    private static List<PartReading> all(SheetHeading heading, List<PartReading> readings) {
        List<PartReading> all = new ArrayList<>();
        double kilograms = heading.carcass().mass().value();
        all.add(new PartReading(
                TreePath.ROOT, PartReading.State.WHOLE, List.of(new Weighing(heading.carcassScale(), kilograms, 1))));
        all.addAll(readings);
        return all;
    }

    /**
     * The sheet as a cutting test.
     *
     * @return its readings in balance
     */
    public CuttingTest test() {
        return CuttingTest.of(expected, readings);
    }
}
