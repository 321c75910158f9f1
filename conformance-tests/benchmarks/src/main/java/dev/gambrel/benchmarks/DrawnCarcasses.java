package dev.gambrel.benchmarks;

/**
 * DrawnCarcasses that were weighed, and on which the back fat was measured. Drawn by multiplication, so that SQL can draw the same.
 *
 * @param kilograms cold weights, 20 kg to 24 kg
 * @param backFat millimetres, 3 mm to 12 mm
 */
record DrawnCarcasses(double[] kilograms, double[] backFat) {
    static final int MODULUS = 1_000_003;
    static final int STEP_OF_WEIGHT = 7_919;
    static final int STEP_OF_FAT = 104_729;

    /**
     * So many carcasses, the same each time.
     *
     * @param count how many, at most a million
     * @return the carcasses
     */
    static DrawnCarcasses of(int count) {
        double[] kilograms = new double[count];
        double[] backFat = new double[count];
        for (int i = 0; i < count; i++) {
            kilograms[i] = 20 + 4 * part(i, STEP_OF_WEIGHT);
            backFat[i] = 3 + 9 * part(i, STEP_OF_FAT);
        }
        return new DrawnCarcasses(kilograms, backFat);
    }

    private static double part(int i, int step) {
        return (double) ((long) i * step % MODULUS) / MODULUS;
    }

    int count() {
        return kilograms.length;
    }
}
