package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.row;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.yields.figure.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** Two parts of a leg that are put in one box are one part: its mean is the sum of theirs, and it strays as their sum does. */
class MergingLaws {
    private static final int PARTS = 4;

    @Property(tries = 200)
    void parts_put_together_beside_a_rest_weigh_and_stray_as_their_sum(
            @ForAll @Size(PARTS) List<@DoubleRange(min = 1, max = 20) Double> shares,
            @ForAll @Size(PARTS) List<@DoubleRange(min = 0.1, max = 2) Double> spreads) {
        double together = Math.hypot(spreads.get(0), spreads.get(1));
        assertMerged(leg(shares, spreads, true), merged(shares, spreads, together, true), true);
    }

    @Property(tries = 200)
    void parts_put_together_among_parts_that_are_all_weigh_and_stray_as_their_sum(
            @ForAll @Size(PARTS) List<@DoubleRange(min = 1, max = 20) Double> shares,
            @ForAll @Size(PARTS) List<@DoubleRange(min = 0.5, max = 1) Double> spreads) {
        double whole = shares.stream().mapToDouble(Double::doubleValue).sum();
        List<Double> all = shares.stream().map(share -> 100 * share / whole).toList();
        double ofSum = 100
                * Math.sqrt(Sheet.yields(hogget(parts(all, spreads, false)), "1")
                        .figure(MergingLaws::isOneOfTwo)
                        .spread()
                        .variance());
        assertMerged(leg(all, spreads, false), merged(all, spreads, ofSum, false), false);
    }

    private static void assertMerged(CutTree apart, CutTree together, boolean others) {
        ExpectedYields one = Sheet.yields(apart, "22");
        ExpectedYields other = Sheet.yields(together, "22");
        assertSame(
                one.figure(MergingLaws::isOneOfTwo),
                other.figure(row -> row.name().equals("both") ? 1 : 0));
        for (int i = 2; i < PARTS; i++) {
            String name = "part " + i;
            assertSame(
                    row(one, name).allPieces().orElseThrow(),
                    row(other, name).allPieces().orElseThrow());
        }
        if (others) {
            assertSame(
                    one.figure(row -> isOneOfTwo(row) + (row.name().equals("part 2") ? 3 : 0)),
                    other.figure(
                            row -> row.name().equals("both") ? 1 : row.name().equals("part 2") ? 3 : 0));
        }
    }

    private static double isOneOfTwo(YieldRow row) {
        return row.name().equals("part 0") || row.name().equals("part 1") ? 1 : 0;
    }

    private static void assertSame(Estimate one, Estimate other) {
        assertEquals(one.mean(), other.mean(), 1e-9);
        assertEquals(Sheet.sd(one), Sheet.sd(other), 1e-8);
    }

    private static CutTree leg(List<Double> shares, List<Double> spreads, boolean withRest) {
        return hogget(cut("leg", "33 ± 0.9", parts(shares, spreads, withRest)), rest("mince"));
    }

    private static CutTree merged(List<Double> shares, List<Double> spreads, double together, boolean withRest) {
        List<Part> parts = new ArrayList<>(List.of(parts(shares, spreads, withRest)));
        parts.remove(0);
        parts.set(0, cut("both", share(shares.get(0) + shares.get(1), together)));
        return hogget(cut("leg", "33 ± 0.9", parts.toArray(Part[]::new)), rest("mince"));
    }

    private static Part[] parts(List<Double> shares, List<Double> spreads, boolean withRest) {
        List<Part> parts = new ArrayList<>(IntStream.range(0, PARTS)
                .<Part>mapToObj(i -> cut("part " + i, share(shares.get(i), spreads.get(i))))
                .toList());
        if (withRest) {
            parts.add(rest("diced"));
        }
        return parts.toArray(Part[]::new);
    }

    private static String share(double mean, double spread) {
        return String.format(Locale.ROOT, "%.12f ± %.12f", mean, spread);
    }
}
