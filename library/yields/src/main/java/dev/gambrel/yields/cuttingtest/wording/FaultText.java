package dev.gambrel.yields.cuttingtest.wording;

import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.Faults;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.reconciliation.error.Suspect;
import dev.gambrel.yields.reconciliation.pattern.Explanation;
import dev.gambrel.yields.reconciliation.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What may be wrong on a sheet, in sentences. */
public final class FaultText {
    /** What is said beneath mistakes that are offered. */
    public static final String MERELY_OFFERED =
            "These are offered, best first, and nothing was changed by them: look at the bench, then weigh again.";

    private static final int MOST_PATTERNS = 4;
    private static final int MOST_FAR = 6;
    private static final double MOST_RATIO = 1.5;

    /** A sheet with a smaller chance than this does not fit. */
    private static final double FITS = 0.01;

    private final CuttingTest test;
    private final Faults faults;
    private final YieldPlan plan;
    private final List<String> lines = new ArrayList<>();

    private FaultText(CuttingTest test, Faults faults) {
        this.test = test;
        this.faults = faults;
        this.plan = test.plan();
    }

    /**
     * What does not add up.
     *
     * @param test the sheet
     * @param faults what was found of it
     * @return one sentence or more a line, in the order in which they should be read; what belongs to the line before begins with two
     *     blanks. Names are as they are written on the sheet
     */
    public static List<String> amiss(CuttingTest test, Faults faults) {
        FaultText text = new FaultText(test, faults);
        text.amiss();
        return List.copyOf(text.lines);
    }

    /**
     * Mistakes that would explain it: the best, and others only if the sheet would then fit.
     *
     * @param test the sheet
     * @param faults what was found of it
     * @return a sentence for each, the one that explains most first
     */
    public static List<String> offered(CuttingTest test, Faults faults) {
        FaultText text = new FaultText(test, faults);
        List<Explanation> all = faults.explanations();
        IntStream.range(0, Math.min(MOST_PATTERNS, all.size()))
                .filter(i -> i == 0 || all.get(i).after().probability() >= FITS)
                .forEach(i -> text.pattern(all.get(i)));
        return List.copyOf(text.lines);
    }

    private String address(int node) {
        return PartNames.address(plan, node);
    }

    private String names(List<Integer> nodes) {
        return PartNames.all(plan, nodes);
    }

    private void amiss() {
        faults.moreOutThanIn().forEach(this::more);
        faults.belowNothing().forEach(this::belowNothing);
        test.reconciled().contradictions().forEach(this::contradiction);
        faults.suspects().found().forEach(this::suspect);
        if (!faults.suspects().isComplete()) {
            lines.add("So much is wrong that the search was ended; the sheet as a whole is in doubt.");
        }
    }

    private void more(CutBalance balance) {
        lines.add("More came out of " + address(balance.cut()) + " than went in, by "
                + Written.kilograms(balance.excess().mean()) + " kg, even if nothing was lost.");
    }

    private void belowNothing(int node) {
        double weight =
                ((Reconciled.Weight) test.reconciled().weight(node)).estimate().mean();
        lines.add(address(node) + " would weigh " + Written.kilograms(weight)
                + " kg, which cannot be: what was weighed of "
                + address(plan.node(node).above()) + " is too little, or too much of its other parts.");
    }

    private void contradiction(CutBalance balance) {
        lines.add("The scales of " + address(balance.cut())
                + " and its parts are said to be exact, and yet they differ by "
                + Written.kilograms(Math.abs(balance.excess().mean())) + " kg.");
    }

    private void suspect(Suspect suspect) {
        String z = " (" + Written.decimals(Math.abs(suspect.z()), 1) + " standard deviations)";
        if (suspect instanceof Suspect.OneReading one) {
            lines.add("The weight of " + address(one.node()) + " is in doubt: alone it reads "
                    + Written.kilograms(Math.abs(one.error().mean())) + " kg too "
                    + (one.error().mean() > 0 ? "much" : "little") + z + ".");
        } else if (suspect instanceof Suspect.OneBalance balance) {
            double missing = balance.missing().mean();
            lines.add("What does not add up is " + names(balance.cuts()) + ": "
                    + Written.kilograms(Math.abs(missing)) + " kg "
                    + (missing > 0 ? "is missing among its parts" : "more came out than went in") + z + ".");
            lines.add(
                    balance.readings().isEmpty()
                            ? "  Its readings agree with all others: something was not weighed, or weighed twice."
                            : "  One of these is wrong, or something was not weighed, and the figures do not tell which: "
                                    + PartNames.first(plan, balance.readings()) + ".");
        }
    }

    private void pattern(Explanation explanation) {
        lines.add("Perhaps " + words(explanation.pattern(), explanation.size().mean()) + ": chi-square would fall from "
                + Written.decimals(test.reconciled().test().chiSquare(), 1) + " to "
                + Written.decimals(explanation.after().chiSquare(), 1)
                + (explanation.pattern().isOfKnownSize()
                        ? ", and " + Written.percent(explanation.size().mean()) + " % of just that error fits best."
                        : "."));
    }

    private String words(Pattern pattern, double size) {
        if (pattern instanceof Pattern.SameAmountEachWeighing same) {
            return "every weighing on the scale “" + same.scale() + "” reads " + Written.kilograms(Math.abs(size))
                    + " kg too "
                    + (size > 0
                            ? "much, as by a tray that was not tared"
                            : "little, as by a tray that was tared twice");
        } else if (pattern instanceof Pattern.SamePartOfEachWeight part) {
            return "the scale “" + part.scale() + "” shows " + ofTruth(part, size) + " throughout";
        } else if (pattern instanceof Pattern.OneWrittenAsPair one) {
            return "one piece of " + address(one.node()) + " was weighed and written down as the pair";
        } else if (pattern instanceof Pattern.PairCountedTwice twice) {
            return "the pair of " + address(twice.node()) + " was counted twice";
        } else if (pattern instanceof Pattern.WeighedBeforeTrimming before) {
            return names(before.nodes()) + (before.nodes().size() == 1 ? " was" : " were")
                    + " weighed before trimming, and the trim was weighed again (" + names(before.trims()) + ")";
        }
        return "pounds were written as kilograms of " + names(((Pattern.PoundsAsKilograms) pattern).nodes());
    }

    /** The size is of the weights in balance, over which the error is smeared; said is what part it is of the weights that are left. */
    private String ofTruth(Pattern.SamePartOfEachWeight pattern, double size) {
        double read = 0;
        double error = 0;
        for (int node : pattern.nodes()) {
            read += test.reconciled().readings().weight(node);
            error += test.reconciled().weight(node) instanceof Reconciled.Weight known
                    ? size * known.estimate().mean()
                    : size * test.reconciled().readings().weight(node);
        }
        if (!(read - error > 0)) {
            return "far too much";
        }
        double ratio = read / (read - error);
        return ratio > MOST_RATIO || ratio < 1 / MOST_RATIO
                ? Written.decimals(ratio, 2) + " times the true weight"
                : Written.percent(Math.abs(ratio - 1)) + " % too " + (ratio > 1 ? "much" : "little");
    }

    /**
     * What the verdict does not cover, and what is far from expected though it may add up.
     *
     * @param test the sheet
     * @param weighed each part beside what was expected
     * @param level the chance that any is named where all is as the specification says, such as 0.05
     * @return a sentence for each; none where all is checked and as expected
     */
    public static List<String> besides(CuttingTest test, List<PartComparison> weighed, double level) {
        List<String> lines = new ArrayList<>();
        for (int cut : test.notChecked()) {
            List<Integer> open = test.openParts(cut);
            lines.add("Not checked: " + PartNames.address(test.plan(), cut)
                    + (open.isEmpty()
                            ? "."
                            : ", of which was not weighed: " + PartNames.first(test.plan(), open) + "."));
        }
        List<String> far = PartComparison.beyondChance(weighed, level).stream()
                .map(part ->
                        PartNames.address(test.plan(), part.node()) + " " + Written.more(part.difference()) + " kg")
                .toList();
        if (!far.isEmpty()) {
            int more = far.size() - MOST_FAR;
            lines.add("Further from what was expected than chance explains: "
                    + String.join("; ", far.subList(0, Math.min(MOST_FAR, far.size())))
                    + (more > 0 ? "; and " + more + " more." : "."));
        }
        return List.copyOf(lines);
    }
}
