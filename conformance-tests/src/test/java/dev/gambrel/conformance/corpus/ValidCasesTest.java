package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.WeightBand;
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
        var yields = Yields.of(tree).forTypicalCarcass();
        return yields.value()
                .map(expected -> YieldTable.of(expected, unit(tree), DECIMALS).text())
                .orElseGet(() -> Corpus.report(yields.diagnostics()));
    }

    private static Unit unit(CutTree tree) {
        boolean pounds = tree.carcass().band() instanceof WeightBand.Stated band
                && band.low().unit() == Unit.POUND;
        return pounds ? Unit.POUND : Unit.KILOGRAM;
    }

    @Test
    void there_are_cases_enough() {
        assertTrue(files().size() >= 40, files().size() + " files");
    }
}
