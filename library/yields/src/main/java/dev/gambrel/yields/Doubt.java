package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import java.util.Map;

/**
 * How far the mean shares that a specification states may be from the true means of the house. The spreads that it states are
 * those from carcass to carcass, which average out over many; what is not known of a mean does not.
 *
 * <p>A share that does not stray from carcass to carcass has no doubt either.
 */
public sealed interface Doubt {
    /** Nobody has said on what the shares rest. That is not none. */
    Doubt NOT_SAID = new NotSaid();

    /** The mean shares count as exactly known. */
    Doubt NONE = new None();

    /**
     * The shares are means of so many cutting tests, whose carcasses strayed as far as those to come.
     *
     * @param tests how many, 1 or more
     * @return the doubt that such means leave
     * @throws IllegalArgumentException if there were none
     */
    static Doubt fromTests(int tests) {
        return new FromTests(tests);
    }

    /** Nobody has said. */
    record NotSaid() implements Doubt {}

    /** The mean shares count as exactly known. */
    record None() implements Doubt {}

    /**
     * The shares are means of cutting tests. The standard error of the mean of n values is their standard deviation over √n (JCGM
     * 100:2008, 4.2.3).
     *
     * @param tests how many, 1 or more
     */
    record FromTests(int tests) implements Doubt {
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

    /**
     * Said of each part. That of a part that takes what is left follows from the others.
     *
     * @param points the standard error of a part's mean share of the cut above, in points of a per cent, by its address; not
     *     said of a part that is missing
     */
    record OfParts(Map<TreePath, Double> points) implements Doubt {
        /**
         * Copies the map.
         *
         * @throws IllegalArgumentException if a standard error is less than 0
         */
        public OfParts {
            points = Map.copyOf(points);
            if (points.values().stream().anyMatch(error -> !(error >= 0))) {
                throw new IllegalArgumentException("a standard error is 0 or more");
            }
        }
    }
}
