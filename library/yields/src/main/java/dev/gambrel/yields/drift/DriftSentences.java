package dev.gambrel.yields.drift;

import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.ShownFigure;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.Contribution;
import dev.gambrel.yields.control.GroupDifference;
import dev.gambrel.yields.control.Signal;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What charts and groups say, one sentence to each finding. What a sheet names is shown with nothing hidden in it. */
public final class DriftSentences {
    private static final int HUNDREDTHS = 2;

    private final Drift drift;
    private final YieldPlan plan;

    /**
     * Says what moved.
     *
     * @param drift how the shares move
     */
    public DriftSentences(Drift drift) {
        this.drift = drift;
        this.plan = drift.tests().get(0).test().plan();
    }

    /**
     * What the charts of a cut say.
     *
     * @param cut one of the drift
     * @return the cut as a whole first, then part by part; nothing where chance explains all
     */
    public List<String> of(CutDrift cut) {
        List<String> sentences = new ArrayList<>();
        if (cut.shape() instanceof ShapeDrift.Charted charted) {
            charted.chart().signals().forEach(signal -> sentences.add(shape(cut, signal)));
        }
        for (PartDrift part : cut.parts()) {
            sentences.addAll(of(cut, part));
        }
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
                        signals(part.single()).map(signal -> single(cut, part, signal)),
                        signals(part.average()).limit(1).map(signal -> average(cut, part, signal)))
                .toList();
    }

    private static Stream<Signal> signals(ChartAnswer answer) {
        return answer instanceof ChartAnswer.Drawn drawn ? drawn.chart().signals().stream() : Stream.empty();
    }

    private String test(CutDrift cut, Signal signal) {
        return Visible.text(drift.tests().get(cut.tests().get(signal.index())).name());
    }

    private String address(int node) {
        return plan.node(node).address();
    }

    private String single(CutDrift cut, PartDrift part, Signal signal) {
        return address(part.part()) + " was " + percent(part.percents().get(signal.index())) + " % of "
                + address(cut.cut()) + " in " + test(cut, signal) + ": " + beyond(signal) + ".";
    }

    private String average(CutDrift cut, PartDrift part, Signal signal) {
        return address(part.part()) + " has moved " + (signal instanceof Signal.Above ? "up" : "down")
                + ": the average that counts the newest tests most came to "
                + (signal instanceof Signal.Above above
                        ? percent(above.plotted())
                        : percent(((Signal.Below) signal).plotted()))
                + " % of " + address(cut.cut()) + " in " + test(cut, signal) + ", " + beyond(signal) + ".";
    }

    private static String beyond(Signal signal) {
        return signal instanceof Signal.Above above
                ? "above the " + percent(above.limit()) + " % that chance keeps to"
                : "below the " + percent(((Signal.Below) signal).limit()) + " % that chance keeps to";
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
