package dev.gambrel.yields.packs.rule;

import dev.gambrel.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How much a row of a table allows. */
public sealed interface Allowed {
    /**
     * What is allowed for a nominal size.
     *
     * @param nominal a weight or a thickness
     * @return exact, unless the row says how it is rounded
     */
    Quantity of(Quantity nominal);

    /**
     * The same for every size of the row.
     *
     * @param amount so much
     */
    record Fixed(Quantity amount) implements Allowed {
        @Override
        public Quantity of(Quantity nominal) {
            return amount;
        }
    }

    /**
     * A share of the nominal size.
     *
     * @param percent so many per cent of it
     */
    record Percent(BigDecimal percent) implements Allowed {
        @Override
        public Quantity of(Quantity nominal) {
            return Quantity.rounded(nominal.amount().multiply(percent).scaleByPowerOfTen(-2), nominal.unit());
        }
    }

    /**
     * A share of the nominal size, rounded up to whole steps.
     *
     * @param percent so many per cent of it
     * @param step a tenth of a gram, for example
     */
    record PercentRoundedUp(BigDecimal percent, Quantity step) implements Allowed {
        @Override
        public Quantity of(Quantity nominal) {
            BigDecimal share = nominal.common().multiply(percent).scaleByPowerOfTen(-2);
            BigDecimal steps = share.divide(step.common(), 0, RoundingMode.CEILING);
            return new Quantity(steps.multiply(step.amount(), MathContext.DECIMAL128), step.unit());
        }
    }
}
