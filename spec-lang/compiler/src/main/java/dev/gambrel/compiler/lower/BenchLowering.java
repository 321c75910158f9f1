package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.BenchClause;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.bench.Bench;
import dev.gambrel.tree.bench.Matching;
import dev.gambrel.tree.bench.Treatment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the bench is told of one cut. */
final class BenchLowering {
    private static final int MOST_RIBS = 99;

    private Matching matching = new Matching.NotStated();
    private AnatomicalCount ribs = AnatomicalCount.NOT_STATED;
    private List<TradeName> after = List.of();
    private int people = 1;
    private final List<Treatment> treatments = new ArrayList<>();

    /** What comes off before the part that a line names. */
    static List<TradeName> after(Clauses clauses) {
        return clauses.all(BenchClause.After.class).stream()
                .map(said -> said.part().text())
                .toList();
    }

    /** Takes what the cut's own line says. */
    void head(Clauses clauses, FileReport report) {
        clauses.one(BenchClause.Matched.class, "how alike the pair is")
                .flatMap(said -> matching(said, report))
                .ifPresent(read -> matching = read);
        clauses.one(BenchClause.RibCount.class, "how many ribs it has")
                .flatMap(said -> ribs(said, report))
                .ifPresent(read -> ribs = read);
        clauses.one(BenchClause.TwoPeople.class, "how many people it takes").ifPresent(said -> people = 2);
        after = after(clauses);
    }

    /** Takes a line of the braces that scores a tissue or leaves it. */
    void treatment(Located located) {
        Declaration line = located.line();
        Clauses clauses = new Clauses(located);
        String reason =
                clauses.one(Clause.Text.class, "why").map(Clause.Text::text).orElse("");
        clauses.finish();
        Treatment.Kind kind = line.keyword() == Keyword.SCORE_LINE ? Treatment.Kind.SCORED : Treatment.Kind.LEFT;
        treatments.add(new Treatment(kind, PartLowering.name(line), reason));
    }

    Bench bench() {
        return new Bench(matching, ribs, treatments, after, people);
    }

    private static Optional<Matching> matching(BenchClause.Matched said, FileReport report) {
        if (said.within().isEmpty()) {
            return Optional.of(new Matching.Alike());
        }
        return new FigureReader(report)
                .quantity(said.within().get(0), Dimension.WEIGHT)
                .map(Matching.Within::new);
    }

    private static Optional<AnatomicalCount> ribs(BenchClause.RibCount said, FileReport report) {
        FigureReader figures = new FigureReader(report);
        Figure figure = said.figure();
        Amount most = figure.more() instanceof Figure.More.UpTo more ? more.amount() : figure.amount();
        return figures.plainCount(figure.amount(), 1, MOST_RIBS)
                .flatMap(least ->
                        figures.plainCount(most, least, MOST_RIBS).map(high -> new AnatomicalCount(least, high)));
    }
}
