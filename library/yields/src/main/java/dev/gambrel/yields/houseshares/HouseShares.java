package dev.gambrel.yields.houseshares;

import dev.gambrel.yields.figure.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The shares of a cut as the tests of a house give them, each part by itself. They close to the whole.
 *
 * @param tests the tests
 * @param parts one for each part, in order
 */
public record HouseShares(CutTests tests, List<PartShare> parts) {
    /** Copies the list. */
    public HouseShares {
        parts = List.copyOf(parts);
    }

    /**
     * Works the shares out.
     *
     * <p>Tests that count less than others enter every sum with what they count. The variance of the shares is then Σc (s − m)² /
     * (Σc − Σc² / Σc), and the standard error of their mean its root over √n with the effective number n. The standard error of the
     * ratio of sums R = Σcy / Σcx is √(n / (n − 1) Σc² (y − Rx)²) / Σcx (W. G. Cochran, Sampling Techniques, 3rd edition, Wiley,
     * 1977, chapter 6, from memory: for tests that count alike, with no finite population).
     *
     * @param tests 1 or more
     * @return the shares; of one test no spread
     */
    public static HouseShares of(CutTests tests) {
        return new HouseShares(
                tests,
                IntStream.range(0, tests.parts().size())
                        .mapToObj(part -> partShare(tests, part))
                        .toList());
    }

    private static PartShare partShare(CutTests tests, int part) {
        double[] counts = tests.counts();
        double number = tests.effectiveNumber();
        double first = tests.tests().get(0).share(part).mean();
        double mean = first;
        double over = 0;
        double under = 0;
        for (int t = 0; t < counts.length; t++) {
            CuttingTest test = tests.tests().get(t);
            mean += counts[t] / number * (test.share(part).mean() - first);
            over += counts[t] * test.weights().mean(part);
            under += counts[t] * test.kilograms();
        }
        int n = counts.length;
        Straying straying = n < 2 ? new Straying.OneTest() : straying(tests, part, mean, over / under);
        return new PartShare(tests.parts().get(part), n, mean, over / under, straying);
    }

    private static Straying straying(CutTests tests, int part, double mean, double ratio) {
        double[] counts = tests.counts();
        double number = tests.effectiveNumber();
        double squares = 0;
        double weighing = 0;
        double gaps = 0;
        double under = 0;
        for (int t = 0; t < counts.length; t++) {
            CuttingTest test = tests.tests().get(t);
            squares += counts[t] * Math.pow(test.share(part).mean() - mean, 2);
            weighing += counts[t] / number * test.share(part).spread().variance();
            gaps += Math.pow(counts[t] * (test.weights().mean(part) - ratio * test.kilograms()), 2);
            under += counts[t] * test.kilograms();
        }
        double variance = squares / (number - 1);
        return new Straying.Known(
                number,
                new ShareSpread(Math.sqrt(variance), Spread.ofVariance(weighing)),
                Math.sqrt(variance / number),
                Math.sqrt(number / (number - 1) * gaps) / under);
    }

    /**
     * The shares for planning: ratios of sums.
     *
     * @return what to expect
     */
    public ExpectedShares expected() {
        return expected(Averaging.RATIO_OF_SUMS);
    }

    /**
     * What to expect of the next carcasses.
     *
     * @param by what the mean shares are the means of
     * @return means, spreads between carcasses and doubts about the means; of one test neither spread nor doubt
     */
    public ExpectedShares expected(Averaging by) {
        List<ExpectedShare> expected = new ArrayList<>();
        for (PartShare part : parts) {
            expected.add(
                    part.straying() instanceof Straying.Known known
                            ? new ExpectedShare(
                                    part.part(),
                                    part.share(by),
                                    new Spread.Stated(known.spread().betweenCarcasses()),
                                    new Spread.Stated(PartShare.error(by, known)))
                            : new ExpectedShare(part.part(), part.share(by), Spread.NOT_STATED, Spread.NOT_STATED));
        }
        return new ExpectedShares(expected, tests.tests().size());
    }
}
