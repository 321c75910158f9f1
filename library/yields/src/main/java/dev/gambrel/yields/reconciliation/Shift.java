package dev.gambrel.yields.reconciliation;

import dev.gambrel.yields.figure.Estimate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A way in which several readings may stray together: reading i by a times b_i. It is one unknown more, so what it explains follows from the
 * sheet and from the same passes over the b_i (a correction of rank one): with H = V⁻¹ - V⁻¹PV⁻¹, a = b'Hy/b'Hb of variance 1/b'Hb, and the chi-square
 * falls by a²b'Hb (generalised likelihood ratio: S. Narasimhan and R. S. H. Mah, AIChE Journal 33, 1987). Immutable.
 */
public final class Shift {
    /** Below this part of what each reading alone would show, only rounding is left of a shift that the balances do not see. */
    private static final double SEEN = 1e-10;

    private final int[] nodes;
    private final double[] strays;

    private Shift(int[] nodes, double[] strays) {
        this.nodes = nodes;
        this.strays = strays;
    }

    /**
     * A shift of some readings.
     *
     * @param nodes whose readings stray, each once
     * @param strays how far each strays if the shift is one unit
     * @return the shift
     * @throws IllegalArgumentException if they are not equally many, and at least one
     */
    public static Shift of(List<Integer> nodes, double... strays) {
        if (nodes.isEmpty() || nodes.size() != strays.length) {
            throw new IllegalArgumentException(strays.length + " shifts of " + nodes.size() + " readings");
        }
        return new Shift(nodes.stream().mapToInt(Integer::intValue).toArray(), strays.clone());
    }

    /**
     * How large the shift is, so that the sheet fits best. O(nodes); of one reading O(1).
     *
     * @param sheet in balance
     * @return its size in units with the standard deviation; nothing where the balances do not see it, as when everything was weighed on
     *     the scale in question
     */
    public Optional<Estimate> size(Reconciliation sheet) {
        double along = 0;
        double alone = 0;
        TreeBalance passes = sheet.passes();
        for (int i = 0; i < nodes.length; i++) {
            if (passes.isUsed(nodes[i])) {
                along += strays[i] * passes.pull(nodes[i]);
                alone += strays[i] * strays[i] * passes.pullVariance(nodes[i]);
            }
        }
        double curvature = nodes.length == 1 ? alone : curvature(sheet);
        return curvature > SEEN * alone ? Optional.of(Estimate.of(along / curvature, 1 / curvature)) : Optional.empty();
    }

    /** The chi-square of a sheet on which the shifts stand in place of the readings. */
    private double curvature(Reconciliation sheet) {
        Readings readings = sheet.readings();
        double[] column = new double[readings.size()];
        double[] variance = new double[column.length];
        Arrays.setAll(column, v -> readings.isWeighed(v) ? 0 : Double.NaN);
        Arrays.setAll(variance, readings::variance);
        for (int i = 0; i < nodes.length; i++) {
            column[nodes[i]] += strays[i];
        }
        TreeBalance balance = new TreeBalance(sheet.tree());
        sheet.released().forEach(balance::release);
        balance.solve(column, variance);
        return balance.chiSquare();
    }
}
