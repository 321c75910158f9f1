package dev.gambrel.yields.cuttingtest;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Worth as it is shown: lines are rounded so that they add up to the whole as it is shown, by the largest remainder, and differences are
 * those of the figures shown. Each figure is within one step of the exact one, a difference within two. Where nothing is expected of a line
 * the other expectations are rounded on their own.
 *
 * @param lines in the order of {@link Worth#lines}
 * @param whole all of them together
 */
public record RoundedWorth(List<Money> lines, Money whole) {
    /** Copies the list. */
    public RoundedWorth {
        lines = List.copyOf(lines);
    }

    /**
     * One figure beside what was expected.
     *
     * @param actual money
     * @param expected money; of no meaning where nothing is
     * @param isStated false where nothing is expected
     */
    public record Money(BigDecimal actual, BigDecimal expected, boolean isStated) {
        /**
         * How much more is shown than is shown as expected.
         *
         * @return money; nothing where nothing is expected
         */
        public Optional<BigDecimal> difference() {
            return isStated ? Optional.of(actual.subtract(expected)) : Optional.empty();
        }
    }

    /**
     * Rounds.
     *
     * @param worth what was worked out
     * @param places after the point, such as 2 for cents
     * @return the figures as shown
     */
    public static RoundedWorth of(Worth worth, int places) {
        Steps steps = new Steps(places);
        boolean isStated = worth.isStated();
        List<Double> actual =
                worth.lines().stream().map(line -> line.actual().mean()).toList();
        List<Double> expected = worth.lines().stream()
                .map(line -> line.expected().map(should -> should.mean()).orElse(0.0))
                .toList();
        long all = steps.nearest(sum(actual));
        long should = steps.nearest(sum(expected));
        List<Long> shown = steps.parts(actual, all);
        List<Long> shownExpected = isStated ? steps.parts(expected, should) : steps.each(expected);
        List<Money> lines = IntStream.range(0, actual.size())
                .mapToObj(i -> new Money(
                        BigDecimal.valueOf(shown.get(i), places),
                        BigDecimal.valueOf(shownExpected.get(i), places),
                        worth.lines().get(i).isStated()))
                .toList();
        return new RoundedWorth(
                lines, new Money(BigDecimal.valueOf(all, places), BigDecimal.valueOf(should, places), isStated));
    }

    private static double sum(List<Double> figures) {
        return figures.stream().mapToDouble(Double::doubleValue).sum();
    }
}
