package dev.gambrel.yields.control;

import java.util.List;

/**
 * How far off each test of a cut is as a whole.
 *
 * @param limit what T² may be
 * @param squared T² of each test
 * @param signals the tests beyond the limit, in order, and what drives them
 */
public record HotellingChart(double limit, List<Double> squared, List<Signal.OutOfShape> signals) {
    /** Copies the lists. */
    public HotellingChart {
        squared = List.copyOf(squared);
        signals = List.copyOf(signals);
    }
}
