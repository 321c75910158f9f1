package dev.gambrel.yields.cuttingtest;

/**
 * What one scale says.
 *
 * @param scale which scale
 * @param kilograms the weight without tare, of all weighings together
 * @param times in how many weighings, such as trays
 */
public record Weighing(Scale scale, double kilograms, int times) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the weight is not finite, or there was no weighing
     */
    public Weighing {
        if (!Double.isFinite(kilograms) || times < 1) {
            throw new IllegalArgumentException(kilograms + " kg in " + times + " weighings");
        }
    }
}
