package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.TrimRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The limits of a fat cover, each a rule of its own. */
final class FatLimits {
    private final FileReport report;

    FatLimits(FileReport report) {
        this.report = report;
    }

    TrimRule take(Clauses clauses) {
        List<TrimRule.FatLimit> limits = new ArrayList<>();
        for (Clause.FatLimit written : clauses.all(Clause.FatLimit.class)) {
            limit(written).ifPresent(limits::add);
        }
        return new TrimRule.FatCover(limits);
    }

    private Optional<TrimRule.FatLimit> limit(Clause.FatLimit written) {
        Amount first = new Amount(
                written.atMost().terms().subList(0, 1), written.atMost().span());
        Optional<Quantity> atMost = new FigureReader(report).quantity(first, Dimension.LENGTH);
        if (atMost.isPresent() && written.where().isEmpty()) {
            report.add(report.finding(MeaningCode.LIMIT_WITHOUT_PLACE, written.span())
                    .with("limit", atMost.get())
                    .help("Write “at any point” or “on average” after it: neither follows from the other."));
        }
        return atMost.flatMap(
                limit -> written.where().stream().findFirst().map(where -> new TrimRule.FatLimit(limit, where)));
    }
}
