package dev.gambrel.benchmarks;

import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.YieldRow;
import java.util.List;

/**
 * A sheet as a programmer would lay it out by hand for speed: each line followed by all below it, so that what hangs from
 * one part of the carcass lies together.
 *
 * @param ofCarcass each line's share of the carcass, a part of 1; the carcass itself is line 0
 * @param top the lines that the carcass is divided into, and at the end how many lines there are
 */
record FlatSheet(double[] ofCarcass, int[] top) {
    static FlatSheet of(ExpectedYields yields) {
        List<YieldRow> rows = yields.rows();
        double carcass = yields.weighed().allPieces().orElseThrow().mean();
        double[] share = rows.stream()
                .mapToDouble(row -> row.allPieces().orElseThrow().mean() / carcass)
                .toArray();
        int[] top = new int[yields.weighed().parts().size() + 1];
        int next = 0;
        for (int v = 0; v < share.length; v++) {
            if (rows.get(v).level() == 1) {
                top[next++] = v;
            }
        }
        top[next] = share.length;
        return new FlatSheet(share, top);
    }

    int size() {
        return ofCarcass.length;
    }

    /** Each line's share of the part of the carcass that it hangs from, 1 for that part itself. */
    double[] ofTop() {
        double[] share = ofCarcass.clone();
        for (int part = 0; part + 1 < top.length; part++) {
            for (int v = top[part]; v < top[part + 1]; v++) {
                share[v] = ofCarcass[v] / ofCarcass[top[part]];
            }
        }
        return share;
    }
}
