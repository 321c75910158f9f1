package dev.gambrel.yields.packs.rule;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;

/**
 * NIST Handbook 133, Checking the Net Contents of Packaged Goods: category A sampling, and the maximum allowable variations
 * of meat and poultry. All figures are from memory: the titles of the tables were seen, their numbers not.
 */
public final class Handbook133 {
    private static final String EDITION = "edition not known";
    private static final Citation VARIATIONS = remembered("Appendix A, Table 2-9, other than homogenous fluids");
    private static final Citation SAMPLING = remembered("Appendix A, Table 2-1");

    /** The maximum allowable variations for labels in grams and kilograms. */
    public static final ToleranceTable METRIC = new ToleranceTable(
            "the table of NIST Handbook 133",
            List.of(Unit.GRAM, Unit.KILOGRAM),
            Quantity.of("0.1", Unit.GRAM),
            rows(Unit.GRAM, List.of("85", "198", "1360", "4530"), List.of("14.2", "28.3", "42.5")));

    /** The maximum allowable variations for labels in pounds and ounces. */
    public static final ToleranceTable AVOIRDUPOIS = new ToleranceTable(
            "the table of NIST Handbook 133",
            List.of(Unit.OUNCE, Unit.POUND),
            Quantity.of("0.01", Unit.OUNCE),
            rows(Unit.OUNCE, List.of("3", "7", "48", "160"), List.of("0.5", "1", "1.5")));

    /**
     * Category A: the average error with its correction is not less than nothing, and hardly a pack lacks more than the
     * maximum allowable variation.
     */
    public static final PackTest CATEGORY_A = new PackTest(
            "NIST Handbook 133",
            List.of(METRIC, AVOIRDUPOIS),
            List.of(
                    plan(new SamplingPlan.Batches(12, 250), 12, "0.635", 0),
                    plan(new SamplingPlan.Batches(251, 3_200), 24, "0.422", 0),
                    plan(SamplingPlan.Batches.from(3_201), 48, "0.290", 1)),
            new SmallBatches.NotCovered(),
            Long.MAX_VALUE,
            new SecondLimit.NotKnown(),
            0.975);

    private Handbook133() {}

    private static SamplingPlan plan(SamplingPlan.Batches batches, int packs, String factor, long accept) {
        return new SamplingPlan(
                batches,
                List.of(SamplingStage.last(packs, accept)),
                new MeanFactor(new BigDecimal(factor), packs, SAMPLING),
                SAMPLING);
    }

    /** A tenth for the lightest, three fixed variations, and a hundredth for the heaviest. */
    private static List<ToleranceRow> rows(Unit unit, List<String> ends, List<String> amounts) {
        return List.of(
                new ToleranceRow(
                        new ToleranceRow.End.Before(Quantity.of(ends.get(0), unit)),
                        new Allowed.Percent(BigDecimal.TEN),
                        VARIATIONS),
                fixed(unit, ends.get(1), amounts.get(0)),
                fixed(unit, ends.get(2), amounts.get(1)),
                fixed(unit, ends.get(3), amounts.get(2)),
                new ToleranceRow(new ToleranceRow.End.Open(), new Allowed.Percent(BigDecimal.ONE), VARIATIONS));
    }

    private static ToleranceRow fixed(Unit unit, String end, String amount) {
        return new ToleranceRow(
                new ToleranceRow.End.At(Quantity.of(end, unit)),
                new Allowed.Fixed(Quantity.of(amount, unit)),
                VARIATIONS);
    }

    private static Citation remembered(String place) {
        return new Citation("NIST Handbook 133, " + place, EDITION, Certainty.FROM_MEMORY);
    }
}
