package dev.gambrel.yields.estimate;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.estimate.Dimensions;

/** A value in the units in which dimensions are compared, and what it measures. */
record Amount(Fraction value, Dimensions dimensions) {
    static Amount of(Quantity quantity) {
        return new Amount(Fraction.of(quantity.common()), Dimensions.of(quantity.dimension()));
    }

    Amount plus(Amount other) {
        if (!dimensions.equals(other.dimensions)) {
            throw new IllegalArgumentException(
                    dimensions.words() + " and " + other.dimensions.words() + " do not add up");
        }
        return new Amount(value.plus(other.value), dimensions);
    }

    Amount times(Amount other) {
        return new Amount(value.times(other.value), dimensions.times(other.dimensions));
    }

    Amount negative() {
        return new Amount(value.negative(), dimensions);
    }

    Amount inverse() {
        return new Amount(value.inverse(), dimensions.inverse());
    }

    Amount atLeast(Amount limit) {
        return value.compareTo(limit.value) < 0 ? limit : this;
    }

    Amount atMost(Amount limit) {
        return value.compareTo(limit.value) > 0 ? limit : this;
    }
}
