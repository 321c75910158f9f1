package dev.gambrel.yields.packs.rule;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/**
 * Council Directive 76/211/EEC on making up by weight or volume of certain prepackaged products, and the United Kingdom's
 * regulations that grew out of it. The directive's table ends at 10 kg; what lies beyond is of the United Kingdom alone.
 */
public final class Directive76211 {
    private static final String EDITION = "consolidated text, as on legislation.gov.uk";
    private static final String UNITED_KINGDOM =
            "The Weights and Measures (Packaged Goods) Regulations 2006, SI 2006/659";
    private static final Citation TABLE = seen("Annex I, 2.4");
    private static final Citation LAST_ROW = new Citation(
            "Directive 76/211/EEC, Annex I, 2.4, last row, as in the United Kingdom's table on gov.uk",
            "date not known",
            Certainty.SEEN_QUOTED);
    private static final Citation UK_TABLE = new Citation(
            UNITED_KINGDOM + ", table of tolerable negative errors as on gov.uk", "date not known", Certainty.SEEN);
    /** The factors stand in the regulations, which print those of the directive. */
    private static final Citation MEAN =
            new Citation(UNITED_KINGDOM + ", Schedule 2, 4.5 to 4.7", "as made", Certainty.SEEN);

    /** The share of packs that packers are told may be under T1. */
    static final BigDecimal FEW = new BigDecimal("0.025");

    /** Where that share stands. */
    static final Citation FEW_IN_ALL = new Citation(
            "guidance to packers under the average system: at most 2.5 % of a batch under T1",
            "edition not known", Certainty.FROM_MEMORY);

    /** None of the packs under T2 may bear the sign. */
    static final Citation NONE_UNDER_T2 = seen("Annex I, 1.3");

    /** The tolerable negative errors of the directive, 5 g to 10 kg. Those in per cent are rounded up to 0.1 g. */
    public static final ToleranceTable TOLERABLE_NEGATIVE_ERROR =
            new ToleranceTable("the table of directive 76/211/EEC", weights(), grams("5"), rows());

    /** The same with the rows that the United Kingdom adds, 5 g to 25 kg. */
    public static final ToleranceTable UNITED_KINGDOM_TABLE = new ToleranceTable(
            "the table of the United Kingdom",
            weights(),
            grams("5"),
            Stream.concat(rows().stream(), Stream.of(fixed("15000", "150", UK_TABLE), percent("25000", "1", UK_TABLE)))
                    .toList());

    private static final SmallBatches ALL_BELOW_100 = new SmallBatches.AllWeighed(99, FEW, MEAN, FEW_IN_ALL);
    private static final SecondLimit NONE = new SecondLimit.NoneUnder(NONE_UNDER_T2);
    private static final double CONFIDENCE = 0.995;
    /** Annex II, 2.1.2. */
    private static final long LARGEST_BATCH = 10_000;

    /**
     * The reference test where packs are not opened: a second sample where the first does not settle it. The mean is that of all
     * packs weighed; for as many as no factor is printed for, Student's t is worked out. An inspector may mark 30 or 50 of them at
     * random for the mean instead (Annex II, 2.1.4).
     */
    public static final PackTest NOT_DESTRUCTIVE = notDestructive("directive 76/211/EEC", TOLERABLE_NEGATIVE_ERROR);

    /** The reference test where packs are opened, for batches of 100 and more. */
    public static final PackTest DESTRUCTIVE =
            destructive("directive 76/211/EEC, packs opened", TOLERABLE_NEGATIVE_ERROR);

    /** The reference test with the table of the United Kingdom. */
    public static final PackTest UK_NOT_DESTRUCTIVE = notDestructive("SI 2006/659", UNITED_KINGDOM_TABLE);

    /** The destructive reference test with the table of the United Kingdom. */
    public static final PackTest UK_DESTRUCTIVE = destructive("SI 2006/659, packs opened", UNITED_KINGDOM_TABLE);

    /**
     * What the packer answers for, with every pack weighed: mean, at most 2.5 % under T1, none under T2. Of packs that are a
     * sample it says what the sample shows, and nothing of the batch.
     */
    public static final PackTest PACKERS_RULES = new PackTest(
            "the packer's three rules",
            List.of(UNITED_KINGDOM_TABLE),
            List.of(),
            new SmallBatches.AllWeighed(Integer.MAX_VALUE, FEW, seen("Annex I, 1.1"), FEW_IN_ALL),
            Long.MAX_VALUE,
            NONE,
            CONFIDENCE);

    private Directive76211() {}

    private static PackTest notDestructive(String name, ToleranceTable table) {
        Citation counts = seen("Annex II, 2.2.1");
        return new PackTest(
                name,
                List.of(table),
                List.of(
                        plan(new SamplingPlan.Batches(100, 500), counts, "0.503", 30, stages(30, 1, 3, 4)),
                        plan(new SamplingPlan.Batches(501, 3_200), counts, "0.379", 50, stages(50, 2, 5, 6)),
                        plan(SamplingPlan.Batches.from(3_201), counts, "0.379", 50, stages(80, 3, 7, 8))),
                ALL_BELOW_100,
                LARGEST_BATCH,
                NONE,
                CONFIDENCE);
    }

    private static PackTest destructive(String name, ToleranceTable table) {
        return new PackTest(
                name,
                List.of(table),
                List.of(plan(
                        SamplingPlan.Batches.from(100),
                        seen("Annex II, 2.2.2"),
                        "0.640",
                        20,
                        List.of(SamplingStage.last(20, 1)))),
                new SmallBatches.NotCovered(),
                LARGEST_BATCH,
                NONE,
                CONFIDENCE);
    }

    /** A first sample, and a second as large. */
    private static List<SamplingStage> stages(int packs, long accept, long reject, long acceptOfBoth) {
        return List.of(new SamplingStage(packs, accept, reject), SamplingStage.last(2 * packs, acceptOfBoth));
    }

    private static SamplingPlan plan(
            SamplingPlan.Batches batches, Citation counts, String factor, int packs, List<SamplingStage> stages) {
        return new SamplingPlan(batches, stages, new MeanFactor(new BigDecimal(factor), packs, MEAN), counts);
    }

    private static List<ToleranceRow> rows() {
        return List.of(
                percent("50", "9", TABLE),
                fixed("100", "4.5", TABLE),
                percent("200", "4.5", TABLE),
                fixed("300", "9", TABLE),
                percent("500", "3", TABLE),
                fixed("1000", "15", TABLE),
                percent("10000", "1.5", LAST_ROW));
    }

    private static ToleranceRow fixed(String to, String amount, Citation citation) {
        return new ToleranceRow(new ToleranceRow.End.At(grams(to)), new Allowed.Fixed(grams(amount)), citation);
    }

    private static ToleranceRow percent(String to, String percent, Citation citation) {
        return new ToleranceRow(
                new ToleranceRow.End.At(grams(to)),
                new Allowed.PercentRoundedUp(new BigDecimal(percent), grams("0.1")),
                citation);
    }

    static List<Unit> weights() {
        return Stream.of(Unit.values())
                .filter(unit -> unit.dimension() == Dimension.WEIGHT)
                .toList();
    }

    private static Quantity grams(String amount) {
        return Quantity.of(amount, Unit.GRAM);
    }

    private static Citation seen(String place) {
        return new Citation("Directive 76/211/EEC, " + place, EDITION, Certainty.SEEN);
    }
}
