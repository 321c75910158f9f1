package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Home;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.YieldRow;
import java.util.stream.Stream;

/** What a published table gives for one carcass, in the unit that the print uses. */
final class WeighedCarcass {
    private final ExpectedYields yields;
    private final Unit unit;

    WeighedCarcass(ExpectedYields yields, Unit unit) {
        this.yields = yields;
        this.unit = unit;
    }

    /** All pieces of a line together. */
    double weight(String path) {
        return inUnit(row(path).allPieces().orElseThrow().mean());
    }

    double percentOfCutAbove(String path) {
        return row(path).percentOfCutAbove().orElseThrow();
    }

    double percentOfCarcass(String path) {
        return row(path).percentOfCarcass().orElseThrow();
    }

    /** The carcass on the basis of the table. */
    double carcass() {
        return inUnit(yields.carcass().allPieces().orElseThrow().mean());
    }

    double total(Outcome outcome) {
        return inUnit(yields.total(outcome).mean());
    }

    /** What is sold under its own name from one cut. */
    double products(String path) {
        return Stream.of(row(path))
                .flatMap(row -> row.parts().stream())
                .filter(part ->
                        part.home().filter(Home.Product.class::isInstance).isPresent())
                .mapToDouble(part -> inUnit(part.allPieces().orElseThrow().mean()))
                .sum();
    }

    private double inUnit(double kilograms) {
        return kilograms / unit.factor().doubleValue();
    }

    private YieldRow row(String path) {
        TreePath address =
                new TreePath(Stream.of(path.split(" / ")).map(TradeName::of).toList());
        return yields.row(address).orElseThrow(() -> new AssertionError("no line " + path));
    }

    /** Holds a figure against the printed one, to the places that are printed. */
    static void assertPrinted(String printed, double worked, String source) {
        assertEquals(printed, Printed.like(printed, worked), source);
    }
}
