package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A specification says the same in whatever order its lines are written; only the language comes first. */
class DeclarationOrderLaws {
    @Provide
    Arbitrary<Path> files() {
        return Arbitraries.of(Specifications.valid());
    }

    private static Result<Compilation> shuffled(Path file, long seed) {
        String text = Lines.shuffled(Lines.of(Specifications.text(file)), new Random(seed));
        return Specifications.compile(file, text);
    }

    private static CutTree tree(Result<Compilation> result) {
        return result.orElseThrow().tree();
    }

    @Property(tries = 300)
    void the_tree_holds_the_same(@ForAll("files") Path file, @ForAll long seed) {
        CutTree written = tree(Specifications.compile(file));
        assertEquals(Unordered.of(written), Unordered.of(tree(shuffled(file, seed))));
    }

    @Property(tries = 300)
    void the_same_is_found(@ForAll("files") Path file, @ForAll long seed) {
        assertEquals(told(Specifications.compile(file)), told(shuffled(file, seed)));
    }

    /** Which of two lines is the second, and so is underlined, does depend on the order. */
    private static List<String> told(Result<Compilation> result) {
        return result.diagnostics().stream()
                .map(finding -> finding.code().id())
                .sorted()
                .toList();
    }

    @Property(tries = 300)
    void every_part_weighs_the_same(@ForAll("files") Path file, @ForAll long seed) {
        Map<String, YieldRow> written = rows(tree(Specifications.compile(file)));
        Map<String, YieldRow> shuffled = rows(tree(shuffled(file, seed)));
        assertEquals(written.keySet(), shuffled.keySet());
        written.forEach((address, row) -> weighsTheSame(address, row, shuffled.get(address)));
    }

    private static Map<String, YieldRow> rows(CutTree tree) {
        return Yields.of(tree)
                .forTypicalCarcass()
                .value()
                .map(yields -> yields.rows().stream()
                        .collect(Collectors.toMap(row -> row.path() + ", " + row.name(), row -> row)))
                .orElse(Map.of());
    }

    private static void weighsTheSame(String address, YieldRow one, YieldRow other) {
        assertEquals(one.allPieces().isPresent(), other.allPieces().isPresent(), address);
        one.allPieces().ifPresent(weight -> {
            var there = other.allPieces().orElseThrow();
            assertEquals(weight.mean(), there.mean(), 1e-12 * Math.max(1, weight.mean()), address);
            assertEquals(weight.range95().isPresent(), there.range95().isPresent(), address);
        });
    }
}
