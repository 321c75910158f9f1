package dev.gambrel.reports.picture;

import dev.gambrel.reports.svg.Picture;
import dev.gambrel.yields.control.ChartPoint;
import dev.gambrel.yields.control.ControlChart;
import dev.gambrel.yields.control.HotellingChart;
import dev.gambrel.yields.control.Signal;
import dev.gambrel.yields.drift.CutDrift;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.drift.PartDrift;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;

/** Tests in the order of time, with the limits that chance keeps to and what is beyond them. */
public final class DriftPicture {
    private static final ChartUnit DISTANCE = new ChartUnit("T², how far off the cut is as a whole", 1);

    private static final int HUNDREDTHS = 2;

    private DriftPicture() {}

    /**
     * Draws a chart of one figure, be it of single figures or of averages.
     *
     * @param title what it shows
     * @param unit what its figures are
     * @param labels of the tests, one for each, such as the sheet and its date
     * @param chart one point or more
     * @return the picture: points beyond their limits are marked, and told below
     * @throws IllegalArgumentException if there is not a label for each point
     */
    public static Picture of(String title, ChartUnit unit, List<String> labels, ControlChart chart) {
        List<ChartPoint> points = chart.points();
        check(labels, points.size());
        ChartFrame frame = new ChartFrame(
                points.size(),
                points.stream()
                        .flatMapToDouble(point -> DoubleStream.of(
                                point.plotted(),
                                point.limits().low(),
                                point.limits().high())),
                unit);
        frame.scale();
        frame.line(points.stream().map(point -> point.limits().high()).toList(), "limit", true);
        frame.line(Collections.nCopies(points.size(), chart.level().centre()), "mean", false);
        frame.line(points.stream().map(point -> point.limits().low()).toList(), "limit", true);
        frame.tests(points.stream().map(ChartPoint::plotted).toList());
        for (Signal signal : chart.signals()) {
            frame.signal(signal.index(), points.get(signal.index()).plotted(), signal instanceof Signal.Above);
        }
        return frame.picture(title, labels, sentences(chart.signals(), labels, unit));
    }

    /**
     * Draws a chart of one part.
     *
     * @param drift how the shares move
     * @param cut one of it
     * @param part one of its parts
     * @param chart one of the part's
     * @param what of what the chart is, such as "single tests"
     * @return the picture
     */
    public static Picture of(Drift drift, CutDrift cut, PartDrift part, ControlChart chart, String what) {
        String words = drift.node(part.part()).name() + ", % of "
                + drift.node(cut.cut()).address() + ": " + what;
        return of(drift.node(part.part()).address(), new ChartUnit(words, HUNDREDTHS), labels(drift, cut), chart);
    }

    /**
     * Draws the chart of a cut as a whole.
     *
     * @param drift how the shares move
     * @param cut one of it
     * @param chart the cut's
     * @return the picture
     */
    public static Picture of(Drift drift, CutDrift cut, HotellingChart chart) {
        return of(drift.node(cut.cut()).address() + " as a whole", labels(drift, cut), chart);
    }

    private static List<String> labels(Drift drift, CutDrift cut) {
        return cut.tests().stream().map(test -> drift.tests().get(test).name()).toList();
    }

    /**
     * Draws a chart of a cut as a whole.
     *
     * @param title what it shows
     * @param labels of the tests, one for each, such as the sheet and its date
     * @param chart one test or more
     * @return the picture: tests beyond the limit are marked, and told below
     * @throws IllegalArgumentException if there is not a label for each test
     */
    public static Picture of(String title, List<String> labels, HotellingChart chart) {
        int tests = chart.squared().size();
        check(labels, tests);
        ChartFrame frame = new ChartFrame(
                tests,
                DoubleStream.concat(
                        DoubleStream.of(0, chart.limit()),
                        chart.squared().stream().mapToDouble(Double::doubleValue)),
                DISTANCE);
        frame.scale();
        frame.line(Collections.nCopies(tests, chart.limit()), "limit", true);
        frame.tests(chart.squared());
        chart.signals().forEach(signal -> frame.signal(signal.index(), signal.squared(), true));
        return frame.picture(title, labels, sentences(chart.signals(), labels, DISTANCE));
    }

    private static void check(List<String> labels, int tests) {
        if (tests == 0 || labels.size() != tests) {
            throw new IllegalArgumentException(labels.size() + " labels of " + tests + " tests");
        }
    }

    private static List<String> sentences(List<? extends Signal> signals, List<String> labels, ChartUnit unit) {
        return signals.stream()
                .map(signal -> SignalText.of(signal, labels, unit))
                .toList();
    }
}
