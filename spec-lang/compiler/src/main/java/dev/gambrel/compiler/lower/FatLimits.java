package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.quantity.Dimension;
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
        return new FigureReader(report)
                .quantity(written.atMost(), Dimension.LENGTH)
                .map(limit -> new TrimRule.FatLimit(limit, written.where()));
    }
}
