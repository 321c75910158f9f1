package dev.gambrel.yields.cuttingtest;

/**
 * How well a scale weighs.
 *
 * @param name what the house calls it
 * @param division the step of its display in kilograms, such as 0.005: a reading may be off by half of it either way, which is a
 *     variance of a twelfth of its square (JCGM 100:2008, 4.3.7)
 * @param proportional the standard deviation of its calibration as a part of the weight, such as 0.001
 * @param tare the standard deviation of the tare of one weighing in kilograms: trays differ, water clings
 */
public record Scale(String name, double division, double proportional, double tare) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is less than 0 or not finite
     */
    public Scale {
        if (!(isError(division) && isError(proportional) && isError(tare))) {
            throw new IllegalArgumentException(
                    "a scale with errors of " + division + ", " + proportional + ", " + tare);
        }
    }

    private static boolean isError(double figure) {
        return figure >= 0 && Double.isFinite(figure);
    }

    /**
     * A scale of which nothing but the display is known.
     *
     * @param name what the house calls it
     * @param division the step of its display in kilograms
     * @return the scale
     */
    public static Scale ofDivision(String name, double division) {
        return new Scale(name, division, 0, 0);
    }

    /**
     * How uncertain a weight is. Division and tare err anew at each weighing; the calibration errs alike at all.
     *
     * @param kilograms the whole weight
     * @param times in how many weighings
     * @return the variance in square kilograms
     */
    public double variance(double kilograms, int times) {
        double calibration = proportional * kilograms;
        return times * (division * division / 12 + tare * tare) + calibration * calibration;
    }
}
