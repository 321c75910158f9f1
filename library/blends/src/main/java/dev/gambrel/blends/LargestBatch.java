package dev.gambrel.blends;

import dev.gambrel.diagnostic.Result;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The heaviest blend that meets a target, what is left, and what would be needed to use that up.
 *
 * @param batch how much of which tub
 * @param left what is not used, in the order of the names; tubs that are used up are left out
 * @param missing what would use up the rest
 */
public record LargestBatch(Blend batch, List<Taken> left, Missing missing) {
    /** Copies the list. */
    public LargestBatch {
        left = List.copyOf(left);
    }

    /**
     * Finds it. All that is lean enough goes in; what is too fat goes in from the leanest down until it has used up what the
     * others are leaner than need be; and the other way round where the whole is too lean. As each step uses the least of that
     * for a kilogram, no batch is heavier. O(n log n).
     *
     * @param tubs what is there
     * @param target how lean it is to be
     * @return the batch, or {@link BlendCode#LEAN_JUDGED_APART} or {@link BlendCode#TARGET_OUT_OF_REACH}
     */
    public static Result<LargestBatch> of(Tubs tubs, LeanTarget target) {
        if (tubs.judged() != target.judged()) {
            return Result.failed(
                    List.of(BlendFindings.judgedApart(target, tubs.all().get(0))));
        }
        double tooFat = points(tubs, target.low());
        double tooLean = points(tubs, target.high());
        if (tooFat > 0) {
            return upTo(tubs, target, new Missing(target.low(), tooFat));
        }
        return tooLean < 0
                ? upTo(tubs, target, new Missing(target.high(), tooLean))
                : Result.of(of(tubs, tubs.all(), Double.POSITIVE_INFINITY, new Missing(target.low(), 0)), List.of());
    }

    /** By how much the whole misses a lean: more than 0 where it is too fat. */
    private static double points(Tubs tubs, double edge) {
        return tubs.all().stream()
                .mapToDouble(tub -> (edge - tub.percent()) * tub.kilograms())
                .sum();
    }

    private static Result<LargestBatch> upTo(Tubs tubs, LeanTarget target, Missing missing) {
        double sign = Math.signum(missing.points());
        double credit = tubs.all().stream()
                .mapToDouble(tub -> Math.max(0, sign * (tub.percent() - missing.edge())) * tub.kilograms())
                .sum();
        boolean isAnyGood = tubs.all().stream().anyMatch(tub -> sign * (tub.percent() - missing.edge()) >= 0);
        if (!isAnyGood) {
            return Result.failed(List.of(BlendFindings.outOfReach(target, lowest(tubs), highest(tubs))));
        }
        List<Tub> bestFirst = tubs.all().stream()
                .sorted(Comparator.comparingDouble((Tub tub) -> -sign * tub.percent())
                        .thenComparing(Tub::name))
                .toList();
        return Result.of(of(tubs, bestFirst, credit, missing), List.of());
    }

    /** Takes tubs in an order while the credit lasts: what is on the right side of the edge costs none of it. */
    private static LargestBatch of(Tubs tubs, List<Tub> order, double credit, Missing missing) {
        Map<Tub, Double> amount = new HashMap<>();
        double sign = Math.signum(missing.points());
        double left = credit;
        for (Tub tub : order) {
            double need = Math.max(0, sign * (missing.edge() - tub.percent()));
            double taken = need * tub.kilograms() <= left ? tub.kilograms() : left / need;
            left = Math.max(0, left - need * taken);
            amount.put(tub, taken);
        }
        List<Taken> batch = new ArrayList<>();
        List<Taken> rest = new ArrayList<>();
        for (Tub tub : tubs.all()) {
            double taken = amount.get(tub);
            add(batch, tub, taken);
            add(rest, tub, tub.kilograms() - taken);
        }
        return new LargestBatch(new Blend(batch), rest, missing);
    }

    private static void add(List<Taken> to, Tub tub, double kilograms) {
        if (kilograms > 0) {
            to.add(new Taken(tub, kilograms));
        }
    }

    static double lowest(Tubs tubs) {
        return tubs.all().stream().mapToDouble(Tub::percent).min().orElseThrow();
    }

    static double highest(Tubs tubs) {
        return tubs.all().stream().mapToDouble(Tub::percent).max().orElseThrow();
    }
}
