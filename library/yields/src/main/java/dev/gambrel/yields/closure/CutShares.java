package dev.gambrel.yields.closure;

import dev.gambrel.quantity.Expected;
import dev.gambrel.tree.Share;
import java.util.List;

/**
 * The shares of one cut, closed to the whole.
 *
 * @param mean the mean shares, as parts of 1; they add up to 1
 * @param sd their standard deviations, NaN where not stated
 * @param stated whether a mean was written or follows from the others
 * @param closure how they vary together
 */
public record CutShares(double[] mean, double[] sd, boolean[] stated, Closure closure) {
    /** Of what is not cut further. */
    public static final CutShares NOTHING =
            new CutShares(new double[0], new double[0], new boolean[0], new ClosedByOne(0, new double[0]));

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
        if (closing >= 0) {
            sd[closing] = rootSumOfSquares(sd, closing);
        }
        return new CutShares(mean, sd, known, closing >= 0 ? Closure.byOne(closing, sd) : withoutRest(sd, known));
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
