package dev.gambrel.yields.control;

import java.util.List;

/** A test on a chart that chance does not explain. Look for what changed; it is no proof. */
public sealed interface Signal {
    /**
     * Which test.
     *
     * @return its index, from 0
     */
    int index();

    /**
     * It lies above the limit.
     *
     * @param index which test
     * @param plotted what is drawn
     * @param limit the limit
     */
    record Above(int index, double plotted, double limit) implements Signal {}

    /**
     * It lies below the limit.
     *
     * @param index which test
     * @param plotted what is drawn
     * @param limit the limit
     */
    record Below(int index, double plotted, double limit) implements Signal {}

    /**
     * The figure has been above its aim for a while, by more together than chance makes.
     *
     * @param index which test
     * @param since the first test of that while
     * @param sum what the tests since are above the aim together, less the allowance of each
     * @param limit what the sum may be
     */
    record Risen(int index, int since, double sum, double limit) implements Signal {}

    /**
     * The figure has been below its aim for a while, by more together than chance makes.
     *
     * @param index which test
     * @param since the first test of that while
     * @param sum what the tests since are below the aim together, less the allowance of each
     * @param limit what the sum may be
     */
    record Sunk(int index, int since, double sum, double limit) implements Signal {}

    /**
     * The cut as a whole came out as chance hardly makes it.
     *
     * @param index which test
     * @param squared T², how far off it is
     * @param limit what T² may be
     * @param contributions which balances tell it, the first most
     */
    record OutOfShape(int index, double squared, double limit, List<Contribution> contributions) implements Signal {
        /** Copies the list. */
        public OutOfShape {
            contributions = List.copyOf(contributions);
        }
    }
}
