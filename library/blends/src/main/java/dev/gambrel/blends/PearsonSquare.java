package dev.gambrel.blends;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.lean.Lean;
import java.util.List;

/**
 * In which parts two tubs give a lean between theirs: the Pearson square, x f + (1 - x) g = t.
 *
 * @param one the part of the one, from 0 to 1
 * @param other the part of the other, 1 less that
 */
public record PearsonSquare(double one, double other) {
    /**
     * Finds the parts.
     *
     * @param one the one lean
     * @param other the other lean
     * @param percent the per cent lean wanted
     * @return the parts, or {@link BlendCode#TARGET_OUT_OF_REACH} where it is not between the two
     * @throws IllegalArgumentException if the two are not judged in the same way
     */
    public static Result<PearsonSquare> of(Lean one, Lean other, double percent) {
        Judged judged = one.judged();
        if (judged != other.judged()) {
            throw new IllegalArgumentException("visual and chemical lean cannot be blended as one figure");
        }
        double f = one.percent().mean();
        double g = other.percent().mean();
        if (percent < Math.min(f, g) || percent > Math.max(f, g)) {
            return Result.failed(List.of(
                    BlendFindings.outOfReach(LeanTarget.exactly(percent, judged), Math.min(f, g), Math.max(f, g))));
        }
        double x = f == g ? 1 : (percent - g) / (f - g);
        return Result.of(new PearsonSquare(x, 1 - x), List.of());
    }
}
