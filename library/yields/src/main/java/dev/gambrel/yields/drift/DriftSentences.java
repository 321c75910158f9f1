package dev.gambrel.yields.drift;

import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.ShownFigure;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.Contribution;
import dev.gambrel.yields.control.ControlChart;
import dev.gambrel.yields.control.GroupDifference;
import dev.gambrel.yields.control.HotellingAnswer;
import dev.gambrel.yields.control.Signal;
import dev.gambrel.yields.figure.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What charts and groups say, one sentence to each finding. What a sheet names is shown with nothing hidden in it. */
public final class DriftSentences {
    private static final int HUNDREDTHS = 2;
    private static final int MOST_SINGLES = 2;
    private static final int MOST_PLACES = 6;

    private final Drift drift;

    /**
     * Says what moved.
     *
     * @param drift how the shares move
     */
    public DriftSentences(Drift drift) {
        this.drift = drift;
    }

    /**
     * What all charts say.
     *
     * @return one sentence to each finding, and at the end how many chance makes; or why there is nothing to say
     */
    public List<String> ofAllCharts() {
        List<String> sentences = new ArrayList<>();
        drift.cuts().forEach(cut -> sentences.addAll(of(cut)));
        long charts = drift.charts();
        if (charts == 0) {
            return List.of("No share is charted: that needs " + ChartAnswer.FEWEST + " tests that tell it and stray."
                    + " A range with a question mark is where the next test will lie in 95 of 100 cases.");
        } else if (sentences.isEmpty()) {
            return List.of("Nothing moved: chance explains every test.");
        }
        sentences.add(byChance(charts));
        return List.copyOf(sentences);
    }

    private String byChance(long charts) {
        int signals = drift.signals();
        return "On the charts of " + charts + " shares " + (signals == 1 ? "1 signal was" : signals + " signals were")
                + " seen, of single tests and of averages, and chance alone would make about "
                + ShownFigure.of(drift.likelyFalseSignals(), 1) + " while nothing changes"
                + (drift.isQuiet() ? ": no reason to act." : ".");
    }

    /**
     * What cutters, lots and scales do otherwise.
     *
     * @return one sentence to each finding, and at the end how many of them are chance; or why there is nothing to say
     */
    public List<String> ofAllGroups() {
        if (drift.comparisons() == 0) {
            return List.of("Cutters, lots and scales are not compared: that needs two of them with two tests each.");
        } else if (drift.groups().isEmpty()) {
            return List.of("Cutters, lots and scales: of " + drift.comparisons()
                    + " comparisons none shows more than chance explains.");
        }
        List<String> sentences =
                new ArrayList<>(drift.groups().stream().map(this::of).toList());
        sentences.add("These are of " + drift.comparisons()
                + " comparisons; of such differences about 1 in 20 is chance, and they may have had other carcasses.");
        return List.copyOf(sentences);
    }

    /**
     * How a cut stands as a whole.
     *
     * @param cut one of the drift
     * @return what T² of the newest test is, or why there is none; nothing where there is no ratio
     */
    public Optional<String> ofShape(CutDrift cut) {
        if (cut.shape() instanceof ShapeDrift.Charted charted) {
            List<Double> squared = charted.chart().squared();
            return Optional.of("as a whole, by "
                    + charted.parts().stream().map(name -> name.text()).collect(Collectors.joining(", "))
                    + ": T² of the newest test is " + ShownFigure.of(squared.get(squared.size() - 1), 1)
                    + ", and chance keeps below "
                    + ShownFigure.of(charted.chart().limit(), 1));
        } else if (cut.shape() instanceof ShapeDrift.NotCharted not) {
            return Optional.of("as a whole: not charted, since " + why(not.why()));
        }
        return Optional.empty();
    }

    private static String why(HotellingAnswer answer) {
        return answer instanceof HotellingAnswer.TooFew few
                ? "that needs " + few.needed() + " tests and there " + (few.tests() == 1 ? "is " : "are ") + few.tests()
                : "some ratio of its parts never varies: was a weight worked out of another?";
    }

    /**
     * What the charts of a cut say.
     *
     * @param cut one of the drift
     * @return the cut as a whole first, then part by part, of two parts only the first, since the other is what it leaves; nothing
     *     where chance explains all
     */
    public List<String> of(CutDrift cut) {
        List<String> sentences = new ArrayList<>();
        if (cut.shape() instanceof ShapeDrift.Charted charted) {
            charted.chart().signals().forEach(signal -> sentences.add(shape(cut, signal)));
        }
        cut.told().forEach(part -> sentences.addAll(of(cut, part)));
        return List.copyOf(sentences);
    }

    /**
     * What the charts of a part say.
     *
     * @param cut its cut
     * @param part one of its parts
     * @return single tests first, then the average
     */
    public List<String> of(CutDrift cut, PartDrift part) {
        return Stream.concat(
                        chart(part.single()).flatMap(chart -> singles(cut, part, chart)),
                        chart(part.average())
                                .filter(chart -> !chart.signals().isEmpty())
                                .map(chart -> average(cut, part, chart)))
                .toList();
    }

    private static Stream<ControlChart> chart(ChartAnswer answer) {
        return answer instanceof ChartAnswer.Drawn drawn ? Stream.of(drawn.chart()) : Stream.empty();
    }

    private String test(CutDrift cut, Signal signal) {
        return Visible.text(drift.tests().get(cut.tests().get(signal.index())).name());
    }

    private String address(int node) {
        return drift.node(node).address();
    }

    private Stream<String> singles(CutDrift cut, PartDrift part, ControlChart chart) {
        List<Signal> signals = chart.signals();
        if (signals.size() <= MOST_SINGLES) {
            return signals.stream().map(signal -> single(cut, part, signal));
        }
        Interval limits = chart.points().get(0).limits();
        return Stream.of(address(part.part()) + " was beyond the " + percent(limits.low()) + " to "
                + percent(limits.high())
                + " % of " + address(cut.cut()) + " that chance keeps to in " + signals.size() + " tests: "
                + signals.stream()
                        .map(signal -> percent(part.percents().get(signal.index())) + " in " + test(cut, signal))
                        .collect(Collectors.joining("; "))
                + ".");
    }

    private String single(CutDrift cut, PartDrift part, Signal signal) {
        return address(part.part()) + " was "
                + beyond(part.percents().get(signal.index()), signal, cut, " in " + test(cut, signal) + ": ") + ".";
    }

    /** Told by the two levels between which it moved most. */
    private String average(CutDrift cut, PartDrift part, ControlChart chart) {
        Signal worst = chart.signals().stream()
                .max(Comparator.comparingDouble(signal ->
                        Math.abs(plotted(chart, signal) - chart.level().centre())))
                .orElseThrow();
        Change change = Change.of(part.percents());
        return address(part.part()) + " was " + percent(change.before()) + " % of " + address(cut.cut())
                + " on average in the "
                + tests(change.first()) + " up to " + name(cut, change.first() - 1) + ", and " + percent(change.after())
                + " % in the " + tests(part.percents().size() - change.first()) + " since "
                + name(cut, change.first())
                + "; its moving average came to "
                + beyond(plotted(chart, worst), worst, cut, " in " + test(cut, worst) + ", ") + ".";
    }

    private static String tests(int number) {
        return number == 1 ? "test" : number + " tests";
    }

    private String name(CutDrift cut, int test) {
        return Visible.text(drift.tests().get(cut.tests().get(test)).name());
    }

    private static double plotted(ControlChart chart, Signal signal) {
        return chart.points().get(signal.index()).plotted();
    }

    /** With as many decimals as tell the figure from its limit. */
    private String beyond(double figure, Signal signal, CutDrift cut, String where) {
        double limit = signal instanceof Signal.Above above ? above.limit() : ((Signal.Below) signal).limit();
        int places = HUNDREDTHS;
        while (places < MOST_PLACES && ShownFigure.of(figure, places).equals(ShownFigure.of(limit, places))) {
            places++;
        }
        return ShownFigure.of(figure, places) + " % of " + address(cut.cut()) + where
                + (signal instanceof Signal.Above ? "above the " : "below the ")
                + ShownFigure.of(limit, places) + " % that chance keeps to";
    }

    private String shape(CutDrift cut, Signal.OutOfShape signal) {
        Contribution most = signal.contributions().get(0);
        return address(cut.cut()) + " came out otherwise as a whole in " + test(cut, signal) + ", T² "
                + ShownFigure.of(signal.squared(), 1) + " against " + ShownFigure.of(signal.limit(), 1) + ": "
                + (most.deviations() > 0 ? "more " : "less ") + words(most) + " than in the other tests.";
    }

    private static String words(Contribution contribution) {
        return contribution.over().stream().map(name -> name.text()).collect(Collectors.joining(", "))
                + (contribution.under().size() == 1
                        ? " for its " + contribution.under().get(0).text()
                        : " for all the rest");
    }

    /**
     * What a cutter, a lot or a scale does otherwise.
     *
     * @param finding one of the drift
     * @return the sentence
     */
    public String of(GroupFinding finding) {
        GroupDifference difference = finding.difference();
        double points = difference.test().difference();
        return address(finding.part()) + " is " + percent(Math.abs(points))
                + (points > 0 ? " points more" : " points less")
                + " of its cut " + where(finding) + " than elsewhere ("
                + difference.tests() + " tests against " + difference.elsewhere() + "; 95 % range "
                + points(difference.range().low()) + " to "
                + points(difference.range().high()) + ").";
    }

    private static String where(GroupFinding finding) {
        String name = "“" + Visible.text(finding.difference().group()) + "”";
        return switch (finding.common()) {
            case CUTTER -> "by cutter " + name;
            case LOT -> "in lot " + name;
            case SCALE -> "on scale " + name;
        };
    }

    private static String percent(double percent) {
        return ShownFigure.of(percent, HUNDREDTHS);
    }

    private static String points(double points) {
        return ShownFigure.signed(points, HUNDREDTHS);
    }
}
