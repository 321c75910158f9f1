package dev.gambrel.yields.testedcuts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.reconciliation.MassTree;
import dev.gambrel.yields.reconciliation.Readings;
import dev.gambrel.yields.reconciliation.Reconciliation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Variances of readings 1, 2 and 3 of the parts, 4 of the cut, so V = 10; the least-squares answer worked out by hand. */
class SiblingsTest {
    private static final MassTree CUT = MassTree.of(-1, 0, 0, 0);

    private static Readings parts() {
        return Readings.none(4).with(1, 10, 1).with(2, 20, 2).with(3, 30, 3);
    }

    @Test
    void whatIsHeldAgainstTheCutVariesTogether() {
        JointEstimate parts = Siblings.of(Reconciliation.of(CUT, parts().with(0, 61, 4)), List.of(1, 2, 3));
        double[] v = {1, 2, 3};
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double wanted = (i == j ? v[i] : 0) - v[i] * v[j] / 10;
                assertEquals(wanted, parts.covariance(i, j).orElseThrow(), 1e-12, i + ", " + j);
            }
        }
        assertEquals(10.1, parts.mean(0), 1e-12);
    }

    @Test
    void whatNothingHoldsTogetherErrsApart() {
        JointEstimate parts = Siblings.of(Reconciliation.of(CUT, parts()), List.of(1, 2, 3));
        assertEquals(0, parts.covariance(0, 1).orElseThrow(), 1e-12);
        assertEquals(2, parts.covariance(1, 1).orElseThrow(), 1e-12);
    }

    /** What is left of an exact cut: its error is that of all others, the other way round. */
    @Test
    void aPartThatIsWhatTheOthersLeaveErrsAgainstThem() {
        Readings two = Readings.none(4).with(0, 61, 0).with(1, 10, 1).with(2, 20, 2);
        JointEstimate parts = Siblings.of(Reconciliation.of(CUT, two), List.of(1, 2, 3));
        assertEquals(-1, parts.covariance(0, 2).orElseThrow(), 1e-12);
        assertEquals(-2, parts.covariance(1, 2).orElseThrow(), 1e-12);
        assertEquals(3, parts.covariance(2, 2).orElseThrow(), 1e-12);
        assertEquals(0, parts.combination(1, 1, 1).spread().variance(), 1e-12);
    }

    /** V is 6 where the cut is exact. */
    @Test
    void partsOfAnExactCutErrAgainstOneAnother() {
        JointEstimate parts = Siblings.of(Reconciliation.of(CUT, parts().with(0, 61, 0)), List.of(1, 2, 3));
        assertEquals(-2.0 / 6, parts.covariance(0, 1).orElseThrow(), 1e-12);
        assertEquals(0, parts.combination(1, 1, 1).spread().variance(), 1e-12);
    }

    /** An exact cut: rows of the covariance add up to 0, and so do its columns. */
    @Test
    void ofAnExactCutNoShareVariesMoreThanTheOthersTogether() {
        JointEstimate parts = Siblings.of(Reconciliation.of(CUT, parts().with(0, 61, 1e-9)), List.of(1, 2, 3));
        assertEquals(0, parts.combination(1, 1, 1).spread().variance(), 1e-8);
    }
}
