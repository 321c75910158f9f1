package dev.gambrel.yields.batch;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.inspection.EquationOrder;
import dev.gambrel.tree.inspection.Vocabulary;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is warned of: the carcass outside the band of the specification, readings outside the ranges of their measure or of an
 * equation.
 *
 * @param band the band, of carcasses on the specification's basis
 * @param left what the losses before that leave of the weight
 * @param needed the columns of readings that the equations name
 * @param checks ranges with the columns that they are of
 */
record Warnings(Range band, double left, int[] needed, List<Check> checks) {
    private static final Range EVERY_WEIGHT = new Range(Double.MIN_VALUE, Double.MAX_VALUE);

    /** A range of one column; the column -1 is the carcass weight. */
    record Check(int reading, Range range, boolean mayBeMissing) {}

    static Warnings of(CutTree tree, List<BasisStep> chain, List<Equation> equations, Columns columns) {
        Range band = tree.carcass().band() instanceof WeightBand.Stated stated
                ? Range.between(stated.low(), stated.high())
                : EVERY_WEIGHT;
        Vocabulary vocabulary = columns.vocabulary();
        Set<Integer> needed = new LinkedHashSet<>();
        List<Check> checks = new ArrayList<>();
        for (Equation equation : equations) {
            for (TradeName name : EquationOrder.names(equation)) {
                if (!(vocabulary.meaning(name).orElse(null) instanceof Meaning.Estimated)) {
                    int column = columns.column(name);
                    needed.add(column);
                    Readings.stated(vocabulary, name).forEach(range -> checks.add(new Check(column, range, false)));
                }
            }
            equation.held()
                    .forEach(held -> checks.add(new Check(columns.column(held.of()), Range.of(held.range()), true)));
        }
        int[] read =
                needed.stream().mapToInt(Integer::intValue).filter(k -> k >= 0).toArray();
        return new Warnings(band, left(chain), read, checks.stream().distinct().toList());
    }

    /** Notes which carcasses of a block are outside the band, and drops what was noted of those that are not refused. */
    void noteBand(Block block, byte[] notes, int from) {
        for (int i = 0; i < block.size(); i++) {
            if (!block.isPassed(i)) {
                notes[from + i] = band.holds(block.kilograms()[i] * left) ? 0 : BatchWorker.OUTSIDE_BAND;
            }
        }
    }

    /** Notes what is to be noted of the readings of each carcass of a block. */
    void noteReadings(Block block, byte[] notes, int from) {
        for (int c = 0; c < checks.size(); c++) {
            Check check = checks.get(c);
            boolean isWeight = check.reading() == Columns.CARCASS_WEIGHT;
            note(block, isWeight ? block.kilograms() : block.readings(check.reading()), check, notes, from);
        }
    }

    private static void note(Block block, double[] values, Check check, byte[] notes, int from) {
        byte missing = check.mayBeMissing() ? BatchWorker.RANGE_NOT_CHECKED : 0;
        for (int i = 0; i < block.size(); i++) {
            if (!check.range().holds(values[i]) && !block.isPassed(i)) {
                notes[from + i] |= Double.isNaN(values[i]) ? missing : BatchWorker.OUTSIDE_RANGE;
            }
        }
    }

    static double left(List<BasisStep> chain) {
        double left = 1;
        for (BasisStep step : chain) {
            left *= 1 - step.share().mean() / 100;
        }
        return left;
    }
}
