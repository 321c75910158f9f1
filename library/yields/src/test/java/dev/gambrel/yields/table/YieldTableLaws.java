package dev.gambrel.yields.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.RandomSheets;
import dev.gambrel.yields.Sheet;
import dev.gambrel.yields.YieldRow;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class YieldTableLaws {
    @Provide
    Arbitrary<CutTree> anySheets() {
        return RandomSheets.anySheets();
    }

    @Property(tries = 200)
    void printed_parts_add_up_to_their_printed_cut(
            @ForAll("anySheets") CutTree tree, @ForAll("weightUnits") Unit unit, @ForAll("places") int decimals) {
        ExpectedYields yields = Sheet.yields(tree, "22.37");
        List<Line> lines = PartLines.of(yields, new Figures(unit, decimals));
        List<YieldRow> rows = yields.rows();
        for (int i = 0; i < rows.size(); i++) {
            YieldRow row = rows.get(i);
            if (!row.isEnd()) {
                List<Line> parts = below(lines, i);
                assertEquals(
                        new BigDecimal(lines.get(i).weights().all()),
                        sum(parts, l -> l.weights().all()));
                assertEquals(
                        new BigDecimal(lines.get(i).shares().ofCarcass()),
                        sum(parts, l -> l.shares().ofCarcass()));
                assertEquals(
                        new BigDecimal("100.00"), sum(parts, l -> l.shares().ofCutAbove()));
            }
            double exact = row.allPieces().orElseThrow().mean() / unit.factor().doubleValue();
            double step = Math.pow(10, -decimals);
            assertEquals(exact, Double.parseDouble(lines.get(i).weights().all()), step * (1 + 1e-6));
        }
    }

    @Property(tries = 100)
    void printed_totals_add_up_to_the_carcass(@ForAll("anySheets") CutTree tree, @ForAll("places") int decimals) {
        List<Line> lines = TotalLines.of(Sheet.yields(tree, "22.37"), new Figures(Unit.KILOGRAM, decimals));
        List<Line> outcomes = below(lines, 0);
        assertEquals(
                new BigDecimal(lines.get(0).weights().all()),
                sum(outcomes, l -> l.weights().all()));
        assertEquals(new BigDecimal("100.00"), sum(outcomes, l -> l.shares().ofCarcass()));
        for (int i = 1; i < lines.size(); i++) {
            List<Line> inside = below(lines, i);
            if (lines.get(i).level() == 1 && !inside.isEmpty()) {
                assertEquals(
                        new BigDecimal(lines.get(i).weights().all()),
                        sum(inside, l -> l.weights().all()));
            }
        }
    }

    @Provide
    Arbitrary<Unit> weightUnits() {
        return Arbitraries.of(Unit.KILOGRAM, Unit.GRAM, Unit.POUND, Unit.OUNCE);
    }

    @Provide
    Arbitrary<Integer> places() {
        return Arbitraries.integers().between(0, 4);
    }

    /** The lines one level below a line. */
    private static List<Line> below(List<Line> lines, int at) {
        int level = lines.get(at).level();
        return lines.subList(at + 1, lines.size()).stream()
                .takeWhile(line -> line.level() > level)
                .filter(line -> line.level() == level + 1)
                .toList();
    }

    private static BigDecimal sum(List<Line> lines, Function<Line, String> figure) {
        return lines.stream().map(figure).map(BigDecimal::new).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
