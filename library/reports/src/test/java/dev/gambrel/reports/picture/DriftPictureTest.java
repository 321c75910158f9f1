package dev.gambrel.reports.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.reports.svg.Picture;
import dev.gambrel.reports.svg.Shape;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.control.Contribution;
import dev.gambrel.yields.control.ControlChart;
import dev.gambrel.yields.control.HotellingChart;
import dev.gambrel.yields.control.IndividualsChart;
import dev.gambrel.yields.control.ProcessLevel;
import dev.gambrel.yields.control.Signal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Legs of invented hoggets, in per cent of the carcass: level 33, one standard deviation 0.5, so limits at 31.5 and 34.5 by hand. */
class DriftPictureTest {
    private static final ChartUnit UNIT = new ChartUnit("leg, % of the carcass", 2);
    private static final ProcessLevel LEVEL = new ProcessLevel(33, 0.5);

    private static List<String> labels(int tests) {
        return IntStream.rangeClosed(1, tests).mapToObj(i -> "lot " + i).toList();
    }

    private static Picture drawn(Double... legs) {
        ControlChart chart = IndividualsChart.of(List.of(legs), LEVEL);
        return DriftPicture.of("Leg", UNIT, labels(legs.length), chart);
    }

    private static List<String> words(Picture picture) {
        return picture.shapes().stream()
                .filter(Shape.Words.class::isInstance)
                .map(shape -> ((Shape.Words) shape).text())
                .toList();
    }

    @Test
    void limits_and_mean_are_named_with_their_figures() {
        List<String> words = words(drawn(33.0, 32.5, 33.4));
        assertTrue(
                words.containsAll(List.of("limit 34.50", "mean 33.00", "limit 31.50", "1: lot 1", "3: lot 3")),
                words.toString());
    }

    @Test
    void a_test_beyond_a_limit_is_told_in_a_sentence() {
        Picture picture = drawn(33.0, 34.8, 31.2);
        assertEquals(
                "Test 2, lot 2 is at 34.80, above the limit of 34.50. Look for what changed."
                        + " Test 3, lot 3 is at 31.20, below the limit of 31.50. Look for what changed.",
                picture.description());
    }

    @Test
    void a_figure_is_told_as_finely_as_tells_it_from_its_limit() {
        assertEquals(
                "Test 1, lot 1 is at 34.503, above the limit of 34.500. Look for what changed.",
                drawn(34.503).description());
    }

    @Test
    void what_chance_explains_is_no_signal() {
        Picture picture = drawn(33.0, 34.4, 31.6);
        assertEquals("No test is beyond the limits.", picture.description());
        assertFalse(picture.svg().contains("<polygon"));
    }

    @Test
    void a_cut_out_of_shape_is_told_by_what_is_most_off() {
        Contribution femur = new Contribution(
                List.of(TradeName.of("femur")), List.of(TradeName.of("topside"), TradeName.of("flat")), 3.2, 0.8);
        HotellingChart chart = new HotellingChart(
                9.2, List.of(1.0, 12.5), List.of(new Signal.OutOfShape(1, 12.5, 9.2, List.of(femur))));
        assertEquals(
                "Test 2, lot 2 is at 12.5, above the limit of 9.2, most by femur against topside, flat (z +3.2)."
                        + " Look for what changed.",
                DriftPicture.of("Leg as a whole", labels(2), chart).description());
    }

    @Test
    void a_figure_that_lasts_too_high_says_since_when() {
        assertEquals(
                "Test 5, lot 5: since Test 3, lot 3 the tests together are above the aim by 2.60, above the limit of 2.50."
                        + " Look for what changed.",
                SignalText.of(new Signal.Risen(4, 2, 2.6, 2.5), labels(5), UNIT));
    }

    @Test
    void figures_that_are_all_the_same_are_drawn() {
        Picture picture = drawn(33.0, 33.0);
        assertFalse(picture.svg().contains("NaN"), picture.svg());
    }

    @Test
    void every_test_has_its_label() {
        ControlChart chart = IndividualsChart.of(List.of(33.0, 33.1), LEVEL);
        assertThrows(IllegalArgumentException.class, () -> DriftPicture.of("Leg", UNIT, labels(1), chart));
    }
}
