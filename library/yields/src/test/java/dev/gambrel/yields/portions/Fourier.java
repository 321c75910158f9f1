package dev.gambrel.yields.portions;

/**
 * The expected number of portions from a normal piece by the Fourier series of the saw-tooth: exact where every piece gives
 * some, and another way than summing chances.
 */
final class Fourier {
    private Fourier() {}

    static double expectedNumber(double mean, double sd, double each, double between, double ends) {
        double step = each + between;
        double ratio = (mean + between - ends) / step;
        double number = ratio - 0.5;
        double fade = 1;
        for (int j = 1; fade > 1e-18; j++) {
            fade = Math.exp(-2 * Math.pow(Math.PI * j * sd / step, 2));
            number += fade * Math.sin(2 * Math.PI * j * ratio) / (j * Math.PI);
        }
        return number;
    }
}
