package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.BenchClause;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.Source;
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
        return new TrimRule.FatCover(limits, finish(clauses));
    }

    private static TrimRule.FatFinish finish(Clauses clauses) {
        boolean planed =
                clauses.one(BenchClause.Planed.class, "that it is planed").isPresent();
        boolean free = clauses.one(BenchClause.PracticallyFree.class, "how free of fat it is")
                .isPresent();
        String measured = clauses.one(
                        Clause.Citation.class, "where it is measured", said -> said.kind() == Source.Kind.MEASURED)
                .map(Clause.Citation::citation)
                .orElse("");
        return new TrimRule.FatFinish(planed, free, measured);
    }

    private Optional<TrimRule.FatLimit> limit(Clause.FatLimit written) {
        return new FigureReader(report)
                .quantity(written.atMost(), Dimension.LENGTH)
                .map(limit -> new TrimRule.FatLimit(limit, written.where()));
    }
}
