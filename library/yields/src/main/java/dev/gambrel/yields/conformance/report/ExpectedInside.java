package dev.gambrel.yields.conformance.report;

import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.conformance.Answer;
import dev.gambrel.yields.conformance.Inside;
import dev.gambrel.yields.conformance.Margin;
import dev.gambrel.yields.conformance.MeanWanted;
import dev.gambrel.yields.conformance.clause.Clause;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How many pieces would be inside a limit on their weight, in sentences; weights in the unit of the limit. */
final class ExpectedInside {
    private static final MathContext SHOWN = new MathContext(5);

    private final Limit limit;
    private final Unit unit;

    private ExpectedInside(Limit limit) {
        this.limit = limit;
        this.unit = limit.least().or(limit::most).orElseThrow().unit();
    }

    static List<String> of(Answer answer) {
        if (answer.inside().isEmpty()) {
            return List.of();
        }
        ExpectedInside sentences =
                new ExpectedInside(((Clause.Limited) answer.asked().clause()).limit());
        List<String> all = new ArrayList<>();
        answer.inside().forEach(inside -> sentences.add(inside, all));
        return all;
    }

    private void add(Inside inside, List<String> all) {
        String of = inside.of().isEmpty() ? "" : " of " + Visible.text(inside.of());
        all.add(String.format(
                Locale.ROOT,
                "Expected%s, at %s ± %s: %.2f %% inside, %.2f %% light, %.2f %% heavy.",
                of,
                weight(inside.weight().aim()),
                weight(inside.weight().deviation()),
                100 * inside.within(),
                100 * inside.light(),
                100 * inside.heavy()));
        if (inside.of().isEmpty()) {
            means(inside, all);
        }
    }

    /** A carcass weighs what it weighs; the hand that cuts a portion can aim otherwise. */
    private void means(Inside inside, List<String> all) {
        List<MeanWanted> wanted = MeanWanted.of(inside, limit);
        wanted.forEach(mean -> all.add(sentence(mean)));
        boolean isTooWide = limit.least()
                .flatMap(low -> limit.most()
                        .map(high ->
                                MeanWanted.lowest(low, inside.weight()) > MeanWanted.highest(high, inside.weight())))
                .orElse(false);
        if (!wanted.isEmpty() && isTooWide) {
            all.add("No mean does that at both ends: pieces that stray by "
                    + weight(inside.weight().deviation()) + " stray too far.");
        }
    }

    private String sentence(MeanWanted wanted) {
        boolean isTop = wanted.end() == Margin.End.HIGH;
        return String.format(
                Locale.ROOT,
                "The mean would have to be at %s %s for %.1f %% to be %s %s.",
                isTop ? "most" : "least",
                weight(wanted.mean()),
                100 * (1 - MeanWanted.OUTSIDE),
                isTop ? "under" : "over",
                wanted.limit());
    }

    private String weight(double kilograms) {
        BigDecimal amount = BigDecimal.valueOf(kilograms / unit.factor().doubleValue())
                .round(SHOWN)
                .stripTrailingZeros();
        return amount.toPlainString() + " " + unit.symbol();
    }
}
