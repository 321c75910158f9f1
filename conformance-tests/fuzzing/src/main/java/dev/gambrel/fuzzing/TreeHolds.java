package dev.gambrel.fuzzing;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.limits.Limits;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.table.YieldTable;

/** What holds of a tree without errors: it goes into JSON and back unchanged, and can be worked out and printed. */
final class TreeHolds {
    private static final int DECIMALS = 3;

    private TreeHolds() {}

    static void all(CutTree tree) {
        comesBack(tree);
        Result<ExpectedYields> yields = Yields.of(tree).forTypicalCarcass();
        FindingsHold.all(yields.diagnostics());
        yields.value().ifPresent(found -> {
            YieldTable table = YieldTable.of(found, Unit.KILOGRAM, DECIMALS);
            FindingsHold.printable(table.text());
            FindingsHold.printable(table.csv());
        });
    }

    static void comesBack(CutTree tree) {
        String json = TreeJsonWriter.write(tree);
        FindingsHold.printable(json);
        Result<CutTree> back = TreeJsonReader.read(new SourceText("any.json", json), Limits.DEFAULT);
        Holds.isTrue(back.value().isPresent(), () -> "our own JSON is refused: " + back.diagnostics() + "\n" + json);
        Holds.isSame(tree, back.value().orElseThrow(), "a tree from JSON");
        Holds.isSame(json, TreeJsonWriter.write(back.value().orElseThrow()), "JSON written twice");
    }
}
