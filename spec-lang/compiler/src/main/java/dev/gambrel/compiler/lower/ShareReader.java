package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Citations;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The share of a part, what it is of other things, and what it rests on. */
final class ShareReader {
    /**
     * A share, and whether it is only a stand-in.
     *
     * @param share the share
     * @param inDoubt true if a figure was written that could not be read
     */
    record Read(Share share, boolean inDoubt) {}

    private final FigureReader figures;

    ShareReader(FileReport report) {
        this.figures = new FigureReader(report);
    }

    Read take(Clauses clauses, TreePath above) {
        Optional<EstimateClause.EstimatedBy> estimated =
                clauses.one(EstimateClause.EstimatedBy.class, "what it is estimated by");
        if (estimated.isPresent()) {
            return new Read(new Share.Estimated(estimated.get().estimate().text()), false);
        }
        Optional<Clause.Figures> written =
                clauses.one(Clause.Figures.class, "a share", clause -> isOfTheCutAbove(clause, above));
        List<Clause.Figures> of = clauses.all(Clause.Figures.class);
        List<TradeName> sources = Citations.take(clauses);
        if (written.isEmpty()) {
            return new Read(new Share.NotStated(), false);
        }
        Optional<Expected> expected = figures.expected(written.get().figure(), Dimension.SHARE);
        List<Share.Derived> others = derived(of);
        return expected.map(share -> new Read(new Share.Stated(share, others, sources), others.size() < of.size()))
                .orElse(new Read(new Share.NotStated(), true));
    }

    /** A share that names the cut above as its base says no more than one that names none. */
    private static boolean isOfTheCutAbove(Clause.Figures clause, TreePath above) {
        return clause.figure().of().stream().allMatch(base -> base.text().equals(TradeName.of(above.last())));
    }

    private List<Share.Derived> derived(List<Clause.Figures> written) {
        List<Share.Derived> others = new ArrayList<>(written.size());
        for (Clause.Figures clause : written) {
            figures.expected(clause.figure(), Dimension.SHARE)
                    .ifPresent(share -> others.add(
                            new Share.Derived(share, clause.figure().of().get(0).text())));
        }
        return others;
    }
}
