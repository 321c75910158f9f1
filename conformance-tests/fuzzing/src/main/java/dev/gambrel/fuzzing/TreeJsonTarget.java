package dev.gambrel.fuzzing;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;

/** From JSON to a tree or to errors; and a tree goes into JSON and back, and can be worked out. */
public final class TreeJsonTarget {
    private static final Limits LIMITS = new Limits(1 << 16, 20, 6, 4, 2_000, 2_000, 50);

    private TreeJsonTarget() {}

    /**
     * Holds one file to it.
     *
     * @param file any bytes
     */
    public static void fuzzerTestOneInput(byte[] file) {
        Result<CutTree> result = TreeJsonReader.read("any.json", file, LIMITS);
        FindingsHold.all(result.diagnostics());
        Holds.isSame(result, TreeJsonReader.read("any.json", file, LIMITS), "what is read twice");
        result.value().ifPresent(TreeHolds::all);
    }
}
