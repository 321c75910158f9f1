package dev.gambrel.yields.batch;

import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A cut whose ways depend on what the carcass weighs, or a piece of the cut. The arithmetic is that of {@link
 * dev.gambrel.yields.working.PieceWeight}.
 *
 * @param cut its line
 * @param first the line of the first way
 * @param ranges the weights that go each way; that of a way which is the rule is not read
 * @param rule which way is the rule, or -1
 * @param asked what is weighed
 */
record WeighedCut(int cut, int first, Range[] ranges, int rule, Asked asked) implements Decision {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final double NOTHING = 1e-9;
    private static final double ROUNDING = 1e-14;

    /** What is weighed. */
    sealed interface Asked {
        /**
         * The carcass on the specification's own basis.
         *
         * @param left what the losses before that leave, as a part of 1
         * @param asWeighed whether nothing is lost before that
         */
        record Carcass(double left, boolean asWeighed) implements Asked {}

        /**
         * One piece of the cut.
         *
         * @param path the lines from what was weighed down to the cut, the first left out
         * @param whole how many pieces the animal has
         * @param apart how much further one strays than its part of all
         */
        record Piece(int[] path, int whole, double apart) implements Asked {}
    }

    @Override
    public int[] differing() {
        return IntStream.range(first, first + ranges.length).toArray();
    }

    @Override
    public void decide(Block block) {
        for (int carcass = 0; carcass < block.size(); carcass++) {
            block.turnTo(carcass);
            block.sure()[carcass] &= isDecided(block);
        }
    }

    private boolean isDecided(Block block) {
        double mean;
        double deviation = 0;
        boolean exact = false;
        if (asked instanceof Asked.Carcass carcass) {
            mean = block.weighed() * carcass.left();
            exact = carcass.asWeighed();
        } else {
            Asked.Piece piece = (Asked.Piece) asked;
            block.descend(piece.path());
            if (block.pathMean() == 0) {
                return allOneWay(block);
            }
            double kilograms = block.weighed() / (piece.whole() * block.pathWorked());
            mean = kilograms * block.pathMean();
            deviation = block.pathVariance() > 0 ? kilograms * Math.sqrt(block.pathVariance()) * piece.apart() : 0;
        }
        return split(block, mean, deviation, exact);
    }

    /** A cut of which there is nothing is nothing in whatever way. */
    private boolean allOneWay(Block block) {
        for (int i = 0; i < ranges.length; i++) {
            block.split(first + i, i == 0 ? 1 : 0, i == 0 ? 1 : 0);
        }
        return true;
    }

    private boolean split(Block block, double mean, double deviation, boolean exact) {
        boolean sure = mean > 0;
        double pieces = 0;
        double weight = 0;
        for (int i = 0; i < ranges.length; i++) {
            if (i != rule) {
                if (deviation > 0) {
                    within(block, first + i, ranges[i], mean, deviation);
                } else {
                    sure &= exact || !ranges[i].isNearAnEnd(mean);
                    block.split(first + i, ranges[i].holds(mean) ? 1 : 0, ranges[i].holds(mean) ? 1 : 0);
                }
                pieces += block.worked(first + i);
                weight += block.share(first + i);
            }
        }
        if (rule >= 0) {
            block.split(first + rule, Math.max(0, 1 - pieces), Math.max(0, 1 - weight));
        }
        return whole(block) && sure;
    }

    private static void within(Block block, int line, Range range, double mean, double deviation) {
        double low = range.isFromTheStart() ? Double.NEGATIVE_INFINITY : (range.low() - mean) / deviation;
        double high = (range.high() - mean) / deviation;
        double pieces = STANDARD.cumulativeProbability(high) - STANDARD.cumulativeProbability(low);
        double weight = pieces - deviation / mean * (density(high) - density(low));
        block.split(line, Math.max(0, pieces), Math.max(0, weight));
    }

    private static double density(double z) {
        return Double.isInfinite(z) ? 0 : STANDARD.density(z);
    }

    /** What is next to nothing is left out, and the others make a whole. */
    private boolean whole(Block block) {
        double pieces = 0;
        double weight = 0;
        boolean sure = true;
        for (int line = first; line < first + ranges.length; line++) {
            sure &= isClear(block.worked(line)) && isClear(block.share(line));
            if (block.worked(line) < NOTHING || block.share(line) < NOTHING) {
                block.split(line, 0, 0);
            }
            pieces += block.worked(line);
            weight += block.share(line);
        }
        for (int line = first; line < first + ranges.length; line++) {
            block.split(line, block.worked(line) / pieces, block.share(line) / weight);
        }
        return sure && pieces > 0 && weight > 0;
    }

    /** Whether rounding could not have carried a split over the limit of next to nothing. */
    private static boolean isClear(double split) {
        return Math.abs(split - NOTHING) > ROUNDING;
    }
}
