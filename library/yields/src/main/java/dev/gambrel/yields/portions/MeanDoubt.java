package dev.gambrel.yields.portions;

/**
 * How far the mean size of a piece may be off. It is off by the same for all carcasses, so that it does not average out.
 */
public sealed interface MeanDoubt {
    /** The mean counts as exactly known. */
    MeanDoubt NONE = new OfPart(0);

    /**
     * One standard deviation of the mean.
     *
     * @param part of the mean itself, from 0 to 1
     */
    record OfPart(double part) implements MeanDoubt {
        /**
         * Checks the part.
         *
         * @throws IllegalArgumentException if it is not from 0 to 1
         */
        public OfPart {
            if (!(0 <= part && part <= 1)) {
                throw new IllegalArgumentException("a mean in doubt by " + part + " of itself");
            }
        }
    }

    /**
     * The mean is that of cutting tests, whose carcasses strayed as far as those to come. The standard error of the mean of n
     * values is their standard deviation over √n (JCGM 100:2008, 4.2.3); a value is what all pieces of one carcass give.
     *
     * @param tests how many, 1 or more
     */
    record FromTests(int tests) implements MeanDoubt {
        /**
         * Checks that there was one.
         *
         * @throws IllegalArgumentException if there was none
         */
        public FromTests {
            if (tests < 1) {
                throw new IllegalArgumentException("not a number of cutting tests: " + tests);
            }
        }
    }

    /** One standard deviation of the mean as a part of it, at most 1. */
    default double ofMean(Portioning one, int ofCarcass, double correlation) {
        if (this instanceof FromTests from) {
            double mean = one.piece().mean();
            double ofAll = one.deviation() * Math.sqrt((1 + (ofCarcass - 1) * correlation) / ofCarcass);
            return mean > 0 ? Math.min(1, ofAll / mean / Math.sqrt(from.tests())) : 0;
        }
        return ((OfPart) this).part();
    }
}
