package dev.gambrel.yields;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.BasisStep;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;

/**
 * What a carcass loses over several days, as a share of its weight before them.
 *
 * <p>With a share p a day, n days leave (1 - p)^n, so that 1 - (1 - p)^n is lost. The doubt is about the house's p, the same
 * every day; to the first order its standard deviation is multiplied by the derivative n (1 - p)^(n - 1) (propagation of
 * uncertainty: JCGM 100:2008, 5.1.2).
 */
final class HangingLoss {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final MathContext DIGITS = MathContext.DECIMAL128;

    private HangingLoss() {}

    static Expected of(BasisStep.Hanging.Daily daily) {
        BigDecimal left = BigDecimal.ONE.subtract(daily.perDay().exactMean().divide(HUNDRED, DIGITS));
        BigDecimal lost = HUNDRED.multiply(BigDecimal.ONE.subtract(left.pow(daily.days(), DIGITS)), DIGITS);
        Quantity mean = new Quantity(lost.round(DIGITS), Unit.PERCENT);
        OptionalDouble perDay = daily.perDay().standardDeviation();
        if (perDay.isEmpty()) {
            return new Expected.Mean(mean);
        }
        BigDecimal slope = left.pow(daily.days() - 1, DIGITS).multiply(BigDecimal.valueOf(daily.days()));
        BigDecimal sd = slope.multiply(BigDecimal.valueOf(perDay.getAsDouble()), DIGITS);
        return new Expected.PlusMinus(mean, new Quantity(sd, Unit.PERCENT));
    }
}
