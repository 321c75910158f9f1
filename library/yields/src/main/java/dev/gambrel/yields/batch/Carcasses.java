package dev.gambrel.yields.batch;

import java.util.Arrays;

/**
 * Carcasses as columns that the caller owns and may fill again: entry i of each column is of carcass i. A column of length 0
 * is one that was not given.
 *
 * @param kilograms what the scale showed, on the basis of the plan
 * @param grades for each grade of the specification, in the order declared, which of its values each carcass has, from 0;
 *     -1 where it is not known
 * @param readings for each of {@link BatchPlan#readings()} what was read, in the unit in which its dimension is compared:
 *     kilograms, millimetres, square millimetres, per cent, hours, or a plain number, which a score is too; NaN where nothing
 *     was
 */
public record Carcasses(double[] kilograms, int[][] grades, double[][] readings) {
    static final int NOT_KNOWN = -1;

    /**
     * Checks that the columns are equally long.
     *
     * @throws IllegalArgumentException if a column is neither as long as the weights nor of length 0
     */
    public Carcasses {
        for (int[] grade : grades) {
            check(grade.length, kilograms.length);
        }
        for (double[] reading : readings) {
            check(reading.length, kilograms.length);
        }
    }

    private static void check(int length, int carcasses) {
        if (length != 0 && length != carcasses) {
            throw new IllegalArgumentException("a column of " + length + " for " + carcasses + " carcasses");
        }
    }

    /**
     * Carcasses of which only the weight is known.
     *
     * @param kilograms what the scale showed
     * @return carcasses without grades and readings
     */
    public static Carcasses weighed(double... kilograms) {
        return new Carcasses(kilograms, new int[0][], new double[0][]);
    }

    int grade(int grade, int carcass) {
        return grade < grades.length && grades[grade].length > 0 ? grades[grade][carcass] : NOT_KNOWN;
    }

    /** Copies one reading of carcasses that follow each other; NaN where nothing was read. */
    void copyReadings(int reading, int from, double[] into, int count) {
        if (reading < readings.length && readings[reading].length > 0) {
            System.arraycopy(readings[reading], from, into, 0, count);
        } else {
            Arrays.fill(into, 0, count, Double.NaN);
        }
    }

    double reading(int reading, int carcass) {
        return reading < readings.length && readings[reading].length > 0 ? readings[reading][carcass] : Double.NaN;
    }
}
