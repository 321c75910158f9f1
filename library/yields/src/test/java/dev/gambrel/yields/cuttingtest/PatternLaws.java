package dev.gambrel.yields.cuttingtest;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.pattern.Explanation;
import dev.gambrel.yields.reconciliation.pattern.Pattern;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * A mistake that is planted on a drawn sheet is named first, or is as good as the one that is; its size is found within what is said of it; and
 * a sheet without a mistake is seldom said to have one. Sheets are drawn with seeds from 0 up, so that every run counts the same.
 */
class PatternLaws {
    private static final int SHEETS = 200;
    private static final double LEVEL = 0.05;

    /** A statement about chance that is true is refused once in a million. */
    private static final double REFUSED = 1e-6;

    /** Two patterns that explain as much but for three standard deviations are not told apart. */
    private static final double AS_GOOD = 9;

    /** A mistake on a sheet. */
    private record Planted(Pattern pattern, double size) {}

    private static int most(int tries, double chance) {
        return BinomialDistribution.of(tries, chance).inverseSurvivalProbability(REFUSED);
    }

    /** Its size is further off than three of its standard deviations, or so far that it is not named, 27 times in 10,000: 1 - erf(3/√2). */
    private static void isFound(Function<WeighedHogget, Planted> mistake) {
        int far = 0;
        for (long seed = 0; seed < SHEETS; seed++) {
            WeighedHogget hogget = WeighedHogget.drawn(seed);
            Planted planted = mistake.apply(hogget);
            List<Explanation> found = hogget.test().explanations(LEVEL);
            Optional<Explanation> right = found.stream()
                    .filter(named -> named.pattern().equals(planted.pattern()))
                    .findFirst();
            boolean isNear = right.filter(named -> Math.abs(named.size().mean() - planted.size())
                            <= 3 * Math.sqrt(named.size().spread().variance()))
                    .isPresent();
            far += isNear ? 0 : 1;
            assertTrue(
                    right.isEmpty() || right.get().merit() >= found.get(0).merit() - AS_GOOD,
                    "of sheet " + seed + ": " + found);
        }
        assertTrue(far <= most(SHEETS, 0.0027), far + " of " + SHEETS);
    }

    @Example
    void a_tray_that_was_not_tared() {
        isFound(hogget -> {
            List<Integer> on = hogget.onBench();
            on.forEach(v -> hogget.stray(v, 0.120 * hogget.times.get(v)));
            return new Planted(new Pattern.SameAmountEachWeighing("bench", on), 0.120);
        });
    }

    @Example
    void a_scale_out_of_calibration() {
        isFound(hogget -> {
            List<Integer> on = hogget.onBench();
            on.forEach(v -> hogget.stray(v, 0.02 * hogget.kilograms.get(v)));
            return new Planted(new Pattern.SamePartOfEachWeight("bench", on), 0.02);
        });
    }

    @Example
    void pounds_written_as_kilograms() {
        isFound(hogget -> {
            int v = heaviest(hogget);
            hogget.stray(v, hogget.kilograms.get(v) * (1 / Unit.POUND.factor().doubleValue() - 1));
            return new Planted(new Pattern.PoundsAsKilograms(List.of(v)), 1);
        });
    }

    @Example
    void one_piece_written_as_the_pair() {
        isFound(hogget -> {
            int v = heaviest(hogget);
            hogget.stray(v, -hogget.kilograms.get(v) / 2);
            return new Planted(new Pattern.OneWrittenAsPair(v), 1);
        });
    }

    /** Of the pairs that were not divided further. */
    private static int heaviest(WeighedHogget hogget) {
        YieldPlan plan = WeighedHogget.plan();
        return hogget.onBench().stream()
                .filter(v -> plan.isEnd(v) && plan.node(v).pieces().whole() == 2)
                .max(Comparator.comparing(hogget.kilograms::get))
                .orElseThrow();
    }

    @Example
    void cuts_weighed_before_trimming() {
        isFound(hogget -> {
            YieldPlan plan = WeighedHogget.plan();
            List<Integer> cuts = hogget.onBench().stream()
                    .filter(v -> plan.node(v).kind() == Kind.TRIMMED)
                    .toList();
            cuts.forEach(v -> trims(plan, v).forEach(t -> hogget.stray(v, hogget.kilograms.get(t))));
            List<Integer> trims =
                    cuts.stream().flatMap(v -> trims(plan, v).boxed()).toList();
            return new Planted(new Pattern.WeighedBeforeTrimming(cuts, trims), 1);
        });
    }

    private static IntStream trims(YieldPlan plan, int trimmed) {
        int cut = plan.node(trimmed).above();
        return IntStream.range(plan.firstPart(cut), plan.firstPart(cut + 1))
                .filter(v -> plan.node(v).kind() == Kind.TRIM);
    }

    @Example
    void a_sheet_without_a_mistake_is_seldom_said_to_have_one() {
        int sheets = 2_000;
        int named = 0;
        for (long seed = 0; seed < sheets; seed++) {
            named += WeighedHogget.drawn(seed).test().explanations(LEVEL).isEmpty() ? 0 : 1;
        }
        assertTrue(named <= most(sheets, LEVEL), named + " of " + sheets);
    }
}
