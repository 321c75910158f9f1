package dev.gambrel.yields.reconciliation;

import java.util.List;

/**
 * A carcass in quarters and parts, all weighed. Variances and differences are those of a tree solved independently by dense least
 * squares; the weights, on which none of its figures depend but the differences, were chosen to give them.
 */
public final class CarcassSheet {
    private static final List<String> NAMES = List.of(
            "carcass",
            "fore",
            "middle",
            "hind",
            "loss",
            "shoulder",
            "neck",
            "breast",
            "rack",
            "loin",
            "leg",
            "chump",
            "meat",
            "bone",
            "trim");

    /** What is cut from what. */
    public static final MassTree TREE = MassTree.of(-1, 0, 0, 0, 0, 1, 1, 1, 2, 2, 3, 3, 10, 10, 10);

    private static final double[] KILOGRAMS = {
        20.00, 6.58, 5.50, 7.60, 0.30, 3.75, 1.30, 1.50, 2.71, 2.80, 5.44, 2.14, 4.09, 0.92, 0.40
    };
    private static final double[] DEVIATION = {
        0.05, 0.05, 0.05, 0.05, 0.04, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.01, 0.01, 0.01
    };

    private CarcassSheet() {}

    /**
     * Where a part stands.
     *
     * @param name its name
     * @return its node
     */
    public static int node(String name) {
        return NAMES.indexOf(name);
    }

    /**
     * The sheet without a gross error.
     *
     * @return every node weighed, the loss known beforehand
     */
    public static Readings readings() {
        Readings readings = Readings.none(NAMES.size());
        for (int v = 0; v < KILOGRAMS.length; v++) {
            readings = readings.with(v, KILOGRAMS[v], DEVIATION[v] * DEVIATION[v]);
        }
        return readings;
    }

    /**
     * The sheet with another reading of a part.
     *
     * @param name which part
     * @param kilograms what was read
     * @return the sheet in balance
     */
    public static Reconciliation with(String name, double kilograms) {
        int v = node(name);
        return Reconciliation.of(TREE, readings().with(v, kilograms, DEVIATION[v] * DEVIATION[v]));
    }
}
