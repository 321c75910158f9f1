package dev.gambrel.yields.closure;

import dev.gambrel.quantity.Expected;
import dev.gambrel.tree.Share;
import java.util.Arrays;
import java.util.List;

/**
 * The shares of one cut, closed to the whole.
 *
 * @param mean the mean shares, as parts of 1; they add up to 1
 * @param sd their standard deviations, NaN where not stated
 * @param stated whether a mean was written or follows from the others
 * @param closing which part takes what is left, or -1
 * @param closure how they vary together
 */
public record CutShares(double[] mean, double[] sd, boolean[] stated, int closing, Closure closure) {
    /** Of what is not cut further. */
    public static final CutShares NOTHING =
            new CutShares(new double[0], new double[0], new boolean[0], -1, Closure.amongAll(new double[0]));

    /** How far written shares may be from the whole before they are refused: 0.05 point, and room for rounding. */
    private static final double ALLOWED_GAP = 0.05e-2 + 1e-9;

    /**
     * Closes what is written. Shares that miss the whole by no more than 0.05 point are scaled to close. A share that is
     * not stated counts as 0: its weight stays in what is left, whose spread then is not stated either; where nothing is
     * left it stays in the other parts, which keep theirs. A spread of more than 100 points says nothing and counts as not
     * stated.
     *
     * @param shares the parts' shares as written
     * @param closing which part takes what is left, or -1
     * @throws IllegalArgumentException if the shares or spreads cannot close
     */
    public static CutShares of(List<Share> shares, int closing) {
        double[] mean = new double[shares.size()];
        double[] sd = new double[shares.size()];
        boolean[] known = new boolean[shares.size()];
        for (int j = 0; j < mean.length; j++) {
            known[j] = j == closing || shares.get(j) instanceof Share.Stated;
            if (shares.get(j) instanceof Share.Stated stated) {
                Expected expected = stated.expected();
                mean[j] = expected.mean() / 100;
                double written = expected.standardDeviation().orElse(Double.NaN) / 100;
                sd[j] = written <= 1 ? written : Double.NaN;
            } else {
                sd[j] = closing < 0 ? 0 : Double.NaN;
            }
        }
        close(mean, closing);
        return closed(mean, sd, known, closing);
    }

    /** A part that takes what is left strays as far as all the others together. */
    private static CutShares closed(double[] mean, double[] sd, boolean[] known, int closing) {
        if (closing < 0) {
            return new CutShares(mean, sd, known, closing, withoutRest(sd, known));
        }
        sd[closing] = rootSumOfSquares(sd, closing);
        return new CutShares(mean, sd, known, closing, Closure.byOne(closing, sd));
    }

    /**
     * The same mean shares with other spreads, closed by the same rule.
     *
     * @param other the standard deviations, NaN where not stated; that of the part that takes what is left is not read
     * @return the shares so varying
     * @throws IllegalArgumentException if none takes what is left and one spread exceeds the sum of the others
     */
    public CutShares varying(double[] other) {
        return closed(mean, other.clone(), stated, closing);
    }

    /**
     * The same mean shares, varying in two ways that know nothing of one another: their covariances add up.
     *
     * @param other the same shares as they vary in the other way
     * @return the shares varying in both
     */
    public CutShares plus(CutShares other) {
        double[] both = new double[sd.length];
        Arrays.setAll(both, j -> Math.hypot(sd[j], other.sd[j]));
        return new CutShares(mean, both, stated, closing, new InTwoWays(closure, other.closure));
    }

    private static void close(double[] mean, int closing) {
        if (closing >= 0) {
            mean[closing] = 0;
        }
        double sum = 0;
        for (double each : mean) {
            sum += each;
        }
        boolean tooMuch = sum > 1 + ALLOWED_GAP;
        boolean tooLittle = closing < 0 && sum < 1 - ALLOWED_GAP;
        if (!(sum >= 0) || tooMuch || tooLittle) {
            throw new IllegalArgumentException("the parts of a cut do not add up to 100 %");
        }
        if (closing >= 0 && sum <= 1) {
            mean[closing] = 1 - sum;
        } else {
            for (int j = 0; j < mean.length; j++) {
                mean[j] /= sum;
            }
        }
    }

    private static double rootSumOfSquares(double[] sd, int without) {
        double sum = 0;
        for (int j = 0; j < sd.length; j++) {
            sum += j == without ? 0 : sd[j] * sd[j];
        }
        return Math.sqrt(sum);
    }

    private static Closure withoutRest(double[] sd, boolean[] known) {
        int unknown = -1;
        for (int j = 0; j < sd.length; j++) {
            if (Double.isNaN(sd[j])) {
                return new PartlyStated(j, sd);
            }
            unknown = known[j] ? unknown : j;
        }
        boolean takenUp = unknown >= 0 && !Conditioned.isPossible(sd);
        return takenUp ? new PartlyStated(unknown, sd) : Closure.amongAll(sd);
    }
}
