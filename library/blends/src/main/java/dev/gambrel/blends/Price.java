package dev.gambrel.blends;

/** What a tub's meat costs, or would fetch if it were sold as trim. */
public sealed interface Price {
    /** Nobody has said. */
    Price NOT_STATED = new NotStated();

    /**
     * A figure.
     *
     * @param money for one kilogram, in any one currency; 0 or more
     */
    record PerKilogram(double money) implements Price {
        /**
         * Checks the figure.
         *
         * @throws IllegalArgumentException if it is less than nothing or not a number
         */
        public PerKilogram {
            if (!(money >= 0 && money < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("a price is nothing or more, not " + money);
            }
        }
    }

    /** Nobody has said. That is not nothing: trim that costs nothing may still be sold as trim. */
    record NotStated() implements Price {}

    /**
     * A price for each kilogram.
     *
     * @param money in any one currency; 0 or more
     * @return the price
     */
    static Price of(double money) {
        return new PerKilogram(money);
    }
}
