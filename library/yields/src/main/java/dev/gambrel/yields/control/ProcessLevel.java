package dev.gambrel.yields.control;

/**
 * Where a figure lies and how far it strays while nothing changes.
 *
 * @param centre its mean
 * @param deviation one standard deviation, more than 0, in the unit of the figure
 */
public record ProcessLevel(double centre, double deviation) {
    /**
     * The mean range of two normal figures over their standard deviation, 2 / √π, as printed in tables of control charts (NIST/SEMATECH
     * e-Handbook of Statistical Methods, 6.3.2.2).
     */
    public static final double RANGE_OF_TWO = 1.128;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is no number, or the standard deviation is not above 0
     */
    public ProcessLevel {
        if (!(Double.isFinite(centre) && deviation > 0 && Double.isFinite(deviation))) {
            throw new IllegalArgumentException("no level of a process: " + centre + " ± " + deviation);
        }
    }

    static double meanMovingRange(Readings readings) {
        double sum = 0;
        for (int i = 1; i < readings.size(); i++) {
            sum += Math.abs(readings.at(i) - readings.at(i - 1));
        }
        return sum / (readings.size() - 1);
    }
}
