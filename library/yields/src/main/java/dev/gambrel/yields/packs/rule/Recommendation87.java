package dev.gambrel.yields.packs.rule;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;

/**
 * OIML R 87, Quantity of product in prepackages, 2004 edition. Its figures were read where Australia's National Trade
 * Measurement Regulations 2009 carry them; the edition of 2016 has other sampling plans.
 */
public final class Recommendation87 {
    private static final String EDITION = "2004 edition";
    private static final Citation TABLE = quoted("Table 2", "4.36");
    private static final Citation SAMPLING = quoted("Table 1", "4.34");
    private static final Citation NONE_UNDER_T2 = new Citation(
            "OIML R 87, 4, as shown by the examples of the Guide to the Average Quantity System in Australia, rule 3",
            "July 2010",
            Certainty.SEEN_QUOTED);

    /** The tolerable deficiencies, to 50 kg: rounded up to 0.1 g, or to 1 g for packs of more than 1 kg. */
    public static final ToleranceTable TOLERABLE_DEFICIENCY = new ToleranceTable(
            "the table of OIML R 87",
            Directive76211.weights(),
            grams("0.1"),
            List.of(
                    percent("50", "9", "0.1"),
                    fixed("100", "4.5"),
                    percent("200", "4.5", "0.1"),
                    fixed("300", "9"),
                    percent("500", "3", "0.1"),
                    fixed("1000", "15"),
                    percent("10000", "1.5", "1"),
                    fixed("15000", "150"),
                    percent("50000", "1", "1")));

    /** The reference test. */
    public static final PackTest REFERENCE_TEST = new PackTest(
            "OIML R 87 (2004)",
            List.of(TOLERABLE_DEFICIENCY),
            List.of(
                    plan(new SamplingPlan.Batches(100, 500), 50, "0.379", 3),
                    plan(new SamplingPlan.Batches(501, 3_200), 80, "0.295", 5),
                    plan(SamplingPlan.Batches.from(3_201), 125, "0.234", 7)),
            new SmallBatches.NotCovered(),
            Long.MAX_VALUE,
            new SecondLimit.NoneUnder(NONE_UNDER_T2),
            0.995);

    private Recommendation87() {}

    private static SamplingPlan plan(SamplingPlan.Batches batches, int packs, String factor, long accept) {
        return new SamplingPlan(
                batches,
                List.of(SamplingStage.last(packs, accept)),
                new MeanFactor(new BigDecimal(factor), packs, SAMPLING),
                SAMPLING);
    }

    private static ToleranceRow fixed(String to, String amount) {
        return new ToleranceRow(new ToleranceRow.End.At(grams(to)), new Allowed.Fixed(grams(amount)), TABLE);
    }

    private static ToleranceRow percent(String to, String percent, String step) {
        return new ToleranceRow(
                new ToleranceRow.End.At(grams(to)),
                new Allowed.PercentRoundedUp(new BigDecimal(percent), grams(step)),
                TABLE);
    }

    private static Quantity grams(String amount) {
        return Quantity.of(amount, Unit.GRAM);
    }

    private static Citation quoted(String table, String regulation) {
        return new Citation(
                "OIML R 87, " + table + ", as in regulation " + regulation
                        + " of the National Trade Measurement Regulations 2009 of Australia",
                EDITION,
                Certainty.SEEN_QUOTED);
    }
}
