package dev.gambrel.yields.packs.rule;

import dev.gambrel.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How much a size may lack, or stray, by a published table.
 *
 * @param nominal the size that is declared or aimed at
 * @param amount the tolerance, in the unit of the table
 * @param citation where it stands
 */
public record Tolerance(Quantity nominal, Quantity amount, Citation citation) {
    /**
     * T1: the nominal quantity less the tolerance. What weighs exactly so much is not short.
     *
     * @return in the unit of the nominal quantity, or of the table where they differ
     */
    public Quantity firstLimit() {
        return moved(-1);
    }

    /**
     * T2: the nominal quantity less twice the tolerance.
     *
     * @return in the unit of the nominal quantity, or of the table where they differ
     */
    public Quantity secondLimit() {
        return moved(-2);
    }

    /**
     * The nominal size and the tolerance, for a tolerance that holds either way.
     *
     * @return in the unit of the nominal size, or of the table where they differ
     */
    public Quantity upperLimit() {
        return moved(1);
    }

    private Quantity moved(int times) {
        BigDecimal by = BigDecimal.valueOf(times);
        if (nominal.unit() == amount.unit()) {
            return Quantity.rounded(nominal.amount().add(amount.amount().multiply(by)), nominal.unit());
        }
        BigDecimal common = nominal.common().add(amount.common().multiply(by));
        BigDecimal plain =
                common.divide(amount.unit().factor(), MathContext.DECIMAL128).stripTrailingZeros();
        return Quantity.rounded(plain.scale() < 0 ? plain.setScale(0) : plain, amount.unit());
    }
}
