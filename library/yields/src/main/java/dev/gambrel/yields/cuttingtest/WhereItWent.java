package dev.gambrel.yields.cuttingtest;

import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What a carcass gave by what became of it, beside what it should have given: what one sort lacks the others have too much, so that
 * the differences add up to 0, to 1e-12 of the carcass.
 *
 * <p>By the reconciled weights; what the specification expects is taken of the reconciled carcass. Immutable.
 */
public final class WhereItWent {
    private final List<Share> shares;

    private WhereItWent(List<Share> shares) {
        this.shares = shares;
    }

    /** What becomes of weight. */
    public enum Sort {
        /** Cuts, and what is left of cuts. */
        MEAT("meat"),
        /** Bones. */
        BONE("bone"),
        /** Fat, silverskin and whatever else is trimmed. */
        TRIM("trim"),
        /** What nobody has in the hand. */
        LOSS("loss"),
        /** Parts of which only the sum is known, whatever became of them. */
        NOT_WEIGHED("not weighed apart");

        private final String words;

        Sort(String words) {
            this.words = words;
        }

        /**
         * What it is called.
         *
         * @return for example "meat"
         */
        public String words() {
            return words;
        }

        static Sort of(Kind kind) {
            return switch (kind) {
                case CARCASS, CUT, TRIMMED, REST -> MEAT;
                case BONE -> BONE;
                case TRIM -> TRIM;
                case LOSS -> LOSS;
            };
        }
    }

    /**
     * All of one sort.
     *
     * @param sort what became of it
     * @param kilograms by the reconciled weights
     * @param expected kilograms
     * @param isStated false where a share of its parts is not stated
     */
    public record Share(Sort sort, double kilograms, double expected, boolean isStated) {
        /**
         * How much more there is than expected.
         *
         * @return kilograms; nothing where that is not known
         */
        public OptionalDouble difference() {
            return isStated ? OptionalDouble.of(kilograms - expected) : OptionalDouble.empty();
        }

        private Share plus(Share more) {
            return new Share(sort, kilograms + more.kilograms, expected + more.expected, isStated && more.isStated);
        }
    }

    /**
     * Sorts what a carcass gave.
     *
     * @param test the sheet, on which the carcass was weighed
     * @return nothing in it where the weight of the carcass is not known
     */
    public static WhereItWent of(CuttingTest test) {
        Sorting sorting = new Sorting(test);
        if (test.reconciled().weight(0) instanceof Reconciled.Weight carcass) {
            sorting.sort(0, carcass.estimate().mean(), carcass.estimate().mean());
        }
        return new WhereItWent(List.copyOf(sorting.shares.values()));
    }

    /**
     * The sorts that there are.
     *
     * @return in the order of {@link Sort}
     */
    public List<Share> shares() {
        return shares;
    }

    /**
     * The same as it is shown: weights and expectations are rounded so that they add up to the same carcass, by the largest remainder, and
     * differences are those of the figures shown, so that they add up to 0. Each figure is within one step of the exact one, a difference
     * within two. Where a share is not stated each expectation is rounded on its own.
     *
     * @param places after the point of kilograms, from 0 to 6
     * @return in the order of {@link Sort}
     */
    public List<Rounded> rounded(int places) {
        Steps steps = new Steps(places);
        long carcass =
                steps.nearest(shares.stream().mapToDouble(Share::kilograms).sum());
        List<Double> expected = shares.stream().map(Share::expected).toList();
        List<Long> weights = steps.parts(shares.stream().map(Share::kilograms).toList(), carcass);
        List<Long> should =
                shares.stream().allMatch(Share::isStated) ? steps.parts(expected, carcass) : steps.each(expected);
        return IntStream.range(0, shares.size())
                .mapToObj(i -> new Rounded(
                        shares.get(i).sort(),
                        BigDecimal.valueOf(weights.get(i), places),
                        BigDecimal.valueOf(should.get(i), places),
                        shares.get(i).isStated()))
                .toList();
    }

    /**
     * All of one sort, as it is shown.
     *
     * @param sort what became of it
     * @param kilograms by the reconciled weights
     * @param expected kilograms
     * @param isStated false where a share of its parts is not stated
     */
    public record Rounded(Sort sort, BigDecimal kilograms, BigDecimal expected, boolean isStated) {
        /**
         * How much more is shown than is shown as expected.
         *
         * @return kilograms; nothing where that is not known
         */
        public Optional<BigDecimal> difference() {
            return isStated ? Optional.of(kilograms.subtract(expected)) : Optional.empty();
        }
    }

    /** Walks down as far as weights are known. */
    private static final class Sorting {
        private final CuttingTest test;
        private final YieldPlan plan;
        private final Map<Sort, Share> shares = new EnumMap<>(Sort.class);

        Sorting(CuttingTest test) {
            this.test = test;
            this.plan = test.plan();
        }

        void sort(int v, double kilograms, double carcass) {
            if (plan.isEnd(v)) {
                add(new Share(Sort.of(plan.node(v).kind()), kilograms, carcass * plan.mean(v), plan.isStated(v)));
                return;
            }
            double left = kilograms;
            double expected = 0;
            boolean isStated = true;
            boolean isOpen = false;
            for (int part = plan.firstPart(v); part < plan.firstPart(v + 1); part++) {
                if (test.reconciled().weight(part) instanceof Reconciled.Weight known) {
                    left -= known.estimate().mean();
                    sort(part, known.estimate().mean(), carcass);
                } else {
                    isOpen = true;
                    expected += carcass * plan.mean(part);
                    isStated &= plan.isStated(part);
                }
            }
            if (isOpen) {
                add(new Share(Sort.NOT_WEIGHED, left, expected, isStated));
            }
        }

        private void add(Share share) {
            shares.merge(share.sort(), share, Share::plus);
        }
    }
}
