package dev.gambrel.yields.packs;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What packs weigh, net. Their order makes no difference to any figure.
 *
 * <p>Sums are exact, so a pack that weighs exactly a limit is never taken for one under it.
 *
 * @param net the weight of each without its wrapping, one pack or more
 */
public record WeighedPacks(List<Quantity> net) {
    /** The least that a pack may weigh, in kilograms: below it the figure or its unit is wrong. */
    public static final BigDecimal LEAST = new BigDecimal("0.000001");

    /** The most that a pack may weigh, in kilograms: above it the figure or its unit is wrong. */
    public static final BigDecimal MOST = new BigDecimal("1000000");

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is no pack, or one for which {@link #isAcceptable} says no
     */
    public WeighedPacks {
        net = List.copyOf(net);
        if (net.isEmpty() || !net.stream().allMatch(WeighedPacks::isAcceptable)) {
            throw new IllegalArgumentException("a pack weighs more than nothing");
        }
    }

    /**
     * Whether something may be the net weight of a pack.
     *
     * @param weight any quantity
     * @return true for a weight from 1 mg to 1000 t
     */
    public static boolean isAcceptable(Quantity weight) {
        if (weight.dimension() != Dimension.WEIGHT || weight.amount().signum() <= 0) {
            return false;
        }
        int magnitude = weight.amount().precision() - weight.amount().scale();
        return Math.abs(magnitude) < 40
                && weight.common().compareTo(LEAST) >= 0
                && weight.common().compareTo(MOST) <= 0;
    }

    /**
     * All packs of two samples.
     *
     * @param more packs weighed after these
     * @return these and those
     */
    public WeighedPacks and(WeighedPacks more) {
        List<Quantity> all = new ArrayList<>(net);
        all.addAll(more.net);
        return new WeighedPacks(all);
    }

    /**
     * How many there are.
     *
     * @return 1 or more
     */
    public int count() {
        return net.size();
    }

    /**
     * How many weigh less than a limit. What weighs exactly the limit is not counted.
     *
     * @param limit a weight
     * @return from 0 to {@link #count}
     */
    public long under(Quantity limit) {
        return net.stream().filter(pack -> pack.compareTo(limit) < 0).count();
    }

    /**
     * Their mean weight.
     *
     * @return kilograms, rounded to 34 digits
     */
    public BigDecimal mean() {
        return sum().divide(BigDecimal.valueOf(count()), MathContext.DECIMAL128);
    }

    /**
     * One standard deviation of a pack, with n − 1 below the sum of squares.
     *
     * @return kilograms, rounded to 34 digits; nothing of one pack alone
     */
    public Optional<BigDecimal> deviation() {
        if (count() < 2) {
            return Optional.empty();
        }
        BigDecimal pairs = BigDecimal.valueOf((long) count() * (count() - 1L));
        return Optional.of(scatter().divide(pairs, MathContext.DECIMAL128).sqrt(MathContext.DECIMAL128));
    }

    /** Kilograms, exactly. */
    BigDecimal sum() {
        return net.stream().map(Quantity::common).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** n times the sum of squares less the square of the sum, exactly: n (n − 1) variances. */
    BigDecimal scatter() {
        BigDecimal squares =
                net.stream().map(Quantity::common).map(x -> x.multiply(x)).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal sum = sum();
        return squares.multiply(BigDecimal.valueOf(count())).subtract(sum.multiply(sum));
    }
}
