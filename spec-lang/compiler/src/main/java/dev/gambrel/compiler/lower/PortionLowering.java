package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.meaning.MissingComma;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Slicing;
import java.util.Optional;

/** A portion line. */
final class PortionLowering {
    private final FileReport report;
    private final FigureReader figures;

    PortionLowering(FileReport report) {
        this.report = report;
        this.figures = new FigureReader(report);
    }

    /** The portion; nothing, after a finding, if how large it is cannot be read. */
    Optional<Portion> portion(Located located, TreePath above) {
        MissingComma.isReported(located);
        Clauses clauses = new Clauses(located);
        Optional<Aim> aim = aim(located, clauses);
        Acceptance acceptance = new AcceptanceReader(report).take(clauses);
        FinishReader reader = new FinishReader(report);
        Slicing slicing = reader.slicing(clauses);
        Finish finish = reader.finish(clauses);
        Portion.EndPieces ends = reader.endPieces(clauses);
        Home unsaid = located.line().damaged() ? new Home.Product() : new Home.NotStated();
        Home remainder = clauses.one(Clause.Remainder.class, "where the remainder goes")
                .<Home>map(to -> new Home.ToStream(to.stream().text()))
                .orElse(unsaid);
        clauses.finish();
        TradeName name = PartLowering.name(located.line());
        return aim.map(size -> new Portion(name, size, acceptance, slicing, finish, ends, remainder));
    }

    private Optional<Aim> aim(Located located, Clauses clauses) {
        Optional<PortionClause.Into> into = clauses.one(PortionClause.Into.class, "into how many");
        Optional<PortionClause.Thick> thick = clauses.one(PortionClause.Thick.class, "how thick it is");
        Optional<Clause.Figures> weight = clauses.one(Clause.Figures.class, "what a portion weighs");
        if (into.isPresent() && (thick.isPresent() || weight.isPresent())) {
            report.add(report.finding(MeaningCode.SAID_TWICE, into.get().span())
                    .with("line", located.line().keyword().word())
                    .with("what", "how large a portion is")
                    .related(
                            report.at(thick.<Clause>map(t -> t)
                                    .or(() -> weight)
                                    .orElseThrow()
                                    .span()),
                            "said here too")
                    .help("Keep one. What each must weigh is written as a limit: between 650 g and 850 g."));
            return Optional.empty();
        }
        if (into.isPresent()) {
            return figures.count(into.get().number(), into.get().span(), 0, FinishReader.MOST)
                    .map(Aim.Number::new);
        }
        if (thick.isEmpty() && weight.isEmpty()) {
            boolean mayBeMeant = located.line().damaged() || clauses.hasStrayWords();
            return mayBeMeant ? Optional.empty() : Optional.of(new Aim.Open());
        }
        return aim(
                weight.map(Clause.Figures::figure).map(f -> figures.expected(f, Dimension.WEIGHT)),
                thick.map(PortionClause.Thick::figure).map(f -> figures.expected(f, Dimension.LENGTH)));
    }

    /** From what was written and, within it, what could be read. */
    private static Optional<Aim> aim(Optional<Optional<Expected>> weight, Optional<Optional<Expected>> thickness) {
        if (weight.isPresent() && thickness.isPresent()) {
            return weight.get().flatMap(w -> thickness.get().map(t -> new Aim.WeightAndThickness(w, t)));
        }
        return weight.isPresent()
                ? weight.get().map(Aim.Weight::new)
                : thickness.flatMap(read -> read).map(Aim.Thickness::new);
    }
}
