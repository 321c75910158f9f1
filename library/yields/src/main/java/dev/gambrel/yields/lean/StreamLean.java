package dev.gambrel.yields.lean;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Ratio;
import dev.gambrel.yields.figure.Spread;
import java.util.List;
import java.util.Optional;

/**
 * How lean a stream comes out, beside what it is meant to be. What portioning leaves over is not counted in it.
 *
 * @param stream the stream, with what it states
 * @param found what its sources give
 */
public record StreamLean(Stream stream, Found found) {
    private static final double MEANS_AGREE = 0.05;

    /** What the sources of a stream give. */
    public sealed interface Found {
        /**
         * Every source says how lean it is.
         *
         * @param ratio lean weight over weight, as per cent, the lean of each source taken as exact
         * @param leanVariance what the spread of the leans themselves adds, in points squared; NaN where one is not stated
         * @param judged how all of the sources are judged
         */
        record Known(Ratio ratio, double leanVariance, Judged judged) implements Found {
            /**
             * How lean the stream comes out.
             *
             * @return mean and standard deviation; the spread is not stated where a spread it needs is not
             */
            public Lean lean() {
                Estimate byWeights = ratio.estimate();
                double within = Math.max(0, Math.min(100, byWeights.mean()));
                return new Lean(
                        new Estimate(
                                within, Spread.ofVariance(byWeights.spread().variance() + leanVariance)),
                        judged);
            }

            /**
             * The range that holds the central 95 %, within 0 % and 100 %: that of the ratio, each side of it made wider by 1.96
             * standard deviations of the leans, in quadrature.
             *
             * @return per cent lean, or nothing where the spreads do not settle it
             */
            public Optional<Interval> range95() {
                if (Double.isNaN(leanVariance)) {
                    return Optional.empty();
                }
                double leans = Expected.NORMAL_95 * Math.sqrt(leanVariance);
                double mean = ratio.estimate().mean();
                return ratio.range95()
                        .map(range -> new Interval(
                                Math.max(0, mean - Math.hypot(mean - range.low(), leans)),
                                Math.min(100, mean + Math.hypot(range.high() - mean, leans))));
            }
        }

        /**
         * Something is missing.
         *
         * @param lean sources that do not say how lean they are
         * @param weight sources that do not say how heavy they are
         */
        record NotStated(List<TreePath> lean, List<TreePath> weight) implements Found {
            /** Copies the lists. */
            public NotStated {
                lean = List.copyOf(lean);
                weight = List.copyOf(weight);
            }
        }

        /**
         * The sources are not all judged in one way, so that their leans cannot be added.
         *
         * @param one the first source
         * @param other the first that is judged otherwise
         */
        record JudgedApart(TreePath one, TreePath other) implements Found {}

        /** Nothing goes into the stream but what portioning may leave over. */
        record Nothing() implements Found {}
    }

    /** How what is found stands to what is stated. */
    public enum Against {
        /** One of the two is not there. */
        CANNOT_SAY,
        /** They are not judged in the same way, so that they cannot be compared. */
        JUDGED_APART,
        /** What is stated lies in the central 95 % of what is found. */
        WITHIN,
        /** It comes out leaner than is stated. */
        LEANER,
        /** It comes out fatter than is stated. */
        FATTER
    }

    /**
     * Compares what is found with what is stated. Where no range is known only the means are compared, to a twentieth of a
     * point.
     *
     * @return how the two stand
     */
    public Against against() {
        if (!(stream.lean() instanceof Stream.Lean.Stated stated) || !(found instanceof Found.Known known)) {
            return Against.CANNOT_SAY;
        }
        if (stated.judged() != known.judged()) {
            return Against.JUDGED_APART;
        }
        double wanted = stated.percent().value();
        double mean = known.lean().percent().mean();
        Interval range = known.range95().orElse(new Interval(mean - MEANS_AGREE, mean + MEANS_AGREE));
        if (wanted < range.low()) {
            return Against.LEANER;
        }
        return wanted > range.high() ? Against.FATTER : Against.WITHIN;
    }
}
