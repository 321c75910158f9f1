package dev.gambrel.yields.drift;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.composition.CompositionSample;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.HotellingAnswer;
import dev.gambrel.yields.control.HotellingChart;
import dev.gambrel.yields.control.HotellingLevel;
import dev.gambrel.yields.control.HotellingLimits;
import dev.gambrel.yields.control.Signal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How a cut moves as a whole, by the ratios of its parts. Losses are left out: they are what is missing, and may come out at nothing or
 * less, of which there is no logarithm; the ratios of the other parts are the same with and without them.
 */
public sealed interface ShapeDrift {
    /** The name of the parts that are too many to stand alone. */
    TradeName OTHERS = TradeName.of("other parts");

    /** How many tests there should be for each part that stands alone. Common practice, no source. */
    int TESTS_A_PART = 2;

    /**
     * The tests on a chart.
     *
     * @param parts the parts that are told apart, the last maybe {@link #OTHERS}
     * @param chart how far off each test is; where first tests set the level its limit is that of the later ones, and each signal has
     *     its own
     */
    record Charted(List<TradeName> parts, HotellingChart chart) implements ShapeDrift {
        /** Copies the list. */
        public Charted {
            parts = List.copyOf(parts);
        }
    }

    /** Fewer than two parts: there is no ratio. */
    record NoRatio() implements ShapeDrift {}

    /**
     * No chart.
     *
     * @param why the reason
     */
    record NotCharted(HotellingAnswer why) implements ShapeDrift {}

    /**
     * Charts a cut.
     *
     * @param names the names of its parts
     * @param weights what they weigh in each test, more than 0
     * @param baseline which tests set the level
     * @return the chart; or why there is none
     */
    static ShapeDrift of(List<TradeName> names, List<double[]> weights, Baseline baseline) {
        int level = baseline.of(weights.size());
        if (names.size() < 2) {
            return new NoRatio();
        } else if (level < ChartAnswer.FEWEST) {
            return new NotCharted(new HotellingAnswer.TooFew(level, ChartAnswer.FEWEST));
        }
        int most = level / TESTS_A_PART;
        List<Integer> alone = names.size() <= most ? all(names.size()) : heaviest(weights.subList(0, level), most - 1);
        List<TradeName> told = Stream.concat(
                        alone.stream().map(names::get),
                        alone.size() < names.size() ? Stream.of(OTHERS) : Stream.<TradeName>empty())
                .toList();
        List<Composition> shapes =
                weights.stream().map(each -> shape(each, alone)).toList();
        HotellingAnswer answer = HotellingLevel.of(told, new CompositionSample(shapes.subList(0, level)));
        return answer instanceof HotellingLevel own
                ? new Charted(told, chart(own, shapes, level))
                : new NotCharted(answer);
    }

    private static List<Integer> all(int parts) {
        return IntStream.range(0, parts).boxed().toList();
    }

    /** In the order of the cut. */
    private static List<Integer> heaviest(List<double[]> weights, int number) {
        int parts = weights.get(0).length;
        double[] sums = new double[parts];
        weights.forEach(each -> Arrays.setAll(sums, i -> sums[i] + each[i]));
        return all(parts).stream()
                .sorted(Comparator.comparingDouble(i -> -sums[i]))
                .limit(number)
                .sorted()
                .toList();
    }

    private static Composition shape(double[] weights, List<Integer> alone) {
        boolean hasOthers = alone.size() < weights.length;
        double[] told = new double[alone.size() + (hasOthers ? 1 : 0)];
        for (int i = 0; i < alone.size(); i++) {
            told[i] = weights[alone.get(i)];
        }
        if (hasOthers) {
            told[alone.size()] = IntStream.range(0, weights.length)
                    .filter(i -> !alone.contains(i))
                    .mapToDouble(i -> weights[i])
                    .sum();
        }
        return Composition.of(told);
    }

    private static HotellingChart chart(HotellingLevel own, List<Composition> shapes, int level) {
        HotellingChart first = own.ofItsTests(HotellingLimits.USUAL);
        if (level == shapes.size()) {
            return first;
        }
        List<Composition> after = shapes.subList(level, shapes.size());
        HotellingChart later = own.ofLaterTests(new CompositionSample(after), HotellingLimits.USUAL);
        List<Double> squared = new ArrayList<>(first.squared());
        squared.addAll(later.squared());
        List<Signal.OutOfShape> signals = new ArrayList<>(first.signals());
        later.signals()
                .forEach(s -> signals.add(
                        new Signal.OutOfShape(s.index() + level, s.squared(), s.limit(), s.contributions())));
        return new HotellingChart(later.limit(), squared, signals);
    }
}
