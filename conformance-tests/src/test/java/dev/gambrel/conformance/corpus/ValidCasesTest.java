package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.table.YieldTable;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One thing that can be said a file: it compiles, and gives the figures that a processor would expect of it. */
class ValidCasesTest {
    private static final int DECIMALS = 3;
    /** For a specification that states no band. */
    private static final Quantity TWENTY_KILOGRAMS = Quantity.of("20", Unit.KILOGRAM);

    static List<Path> files() {
        return Corpus.specifications("valid");
    }

    @ParameterizedTest
    @MethodSource("files")
    void what_can_be_said_gives_the_expected_table(Path file) {
        Result<Compilation> result = new SpecCompiler().compile(file);
        String findings = Corpus.report(result.diagnostics());
        assertTrue(result.value().isPresent(), findings);
        Corpus.hold(findings + table(result.orElseThrow().tree()), Corpus.twin(file));
    }

    private static String table(CutTree tree) {
        Yields yields = Yields.of(tree);
        Result<ExpectedYields> expected = tree.carcass().band() instanceof WeightBand.Stated
                ? yields.forTypicalCarcass()
                : yields.forCarcass(
                        new CarcassWeight(TWENTY_KILOGRAMS, tree.carcass().basis()));
        return YieldTable.of(expected.orElseThrow(), unit(tree), DECIMALS).text();
    }

    private static Unit unit(CutTree tree) {
        boolean pounds = tree.carcass().band() instanceof WeightBand.Stated band
                && band.low().unit() == Unit.POUND;
        return pounds ? Unit.POUND : Unit.KILOGRAM;
    }

    @Test
    void the_case_of_windows_line_ends_has_no_other() {
        String text = Corpus.read(Corpus.folder("valid").resolve("lines_that_end_as_on_windows.cuts"));
        assertTrue(text.contains("\r\n"), "it was not changed on its way through version control");
        assertFalse(text.replace("\r\n", "").contains("\n"));
    }

    @Test
    void there_are_cases_enough() {
        assertTrue(files().size() >= 40, files().size() + " files");
    }
}
