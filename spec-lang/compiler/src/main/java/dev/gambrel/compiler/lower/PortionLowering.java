package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Portion;
import java.util.Optional;

/** A portion line. */
final class PortionLowering {
    private final FileReport report;
    private final FigureReader figures;

    PortionLowering(FileReport report) {
        this.report = report;
        this.figures = new FigureReader(report);
    }

    /** The portion; nothing, after a finding, if its target cannot be read. */
    Optional<Portion> portion(Located located, TreePath above) {
        Clauses clauses = new Clauses(located);
        Optional<Expected> target = clauses.required(
                        Clause.Figures.class,
                        "what a portion weighs",
                        "Write the weight after its name, such as 180 g.")
                .flatMap(clause -> figures.expected(clause.figure(), Dimension.WEIGHT));
        Portion.Range range = clauses.one(Clause.Between.class, "what range is accepted")
                .map(this::range)
                .orElse(new Portion.Range.NotStated());
        Home unsaid = located.line().damaged() ? new Home.Product() : new Home.NotStated();
        Home remainder = clauses.one(Clause.Remainder.class, "where the remainder goes")
                .<Home>map(to -> new Home.ToStream(to.stream().text()))
                .orElse(unsaid);
        clauses.finish();
        return target.map(weight -> new Portion(PartLowering.name(located.line()), weight, range, remainder));
    }

    private Portion.Range range(Clause.Between between) {
        return figures.both(between.low(), between.high(), Dimension.WEIGHT)
                .<Portion.Range>map(ends -> new Portion.Range.Stated(ends.get(0), ends.get(1)))
                .orElse(new Portion.Range.NotStated());
    }
}
