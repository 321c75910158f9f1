package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.Precedence;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a portion line says of what is accepted. */
final class AcceptanceReader {
    private static final List<TradeName> WHOLES = Stream.of(Fewest.Whole.values())
            .map(whole -> TradeName.of("a " + whole.words()))
            .toList();

    private final FileReport report;
    private final FigureReader figures;

    AcceptanceReader(FileReport report) {
        this.report = report;
        this.figures = new FigureReader(report);
    }

    Acceptance take(Clauses clauses) {
        Precedence precedence = clauses.one(PortionClause.Rules.class, "which of two figures rules")
                .map(PortionClause.Rules::rules)
                .orElse(Precedence.NOT_STATED);
        return new Acceptance(
                weight(clauses),
                thickness(clauses),
                precedence,
                smallest(clauses),
                fewest(clauses),
                OutsideReader.take(clauses, report));
    }

    private Limit weight(Clauses clauses) {
        Optional<Limit> range = clauses.one(Clause.Between.class, "what range is accepted")
                .flatMap(said -> between(said.low(), said.high(), Dimension.WEIGHT));
        return range.orElseGet(() -> bound(clauses, false, Dimension.WEIGHT));
    }

    private Limit thickness(Clauses clauses) {
        Optional<Limit> range = clauses.one(PortionClause.ThickBetween.class, "what thickness is accepted")
                .flatMap(said -> between(said.low(), said.high(), Dimension.LENGTH));
        return range.orElseGet(() -> bound(clauses, true, Dimension.LENGTH));
    }

    private Optional<Limit> between(Amount low, Amount high, Dimension dimension) {
        return figures.both(low, high, dimension).map(ends -> new Limit.Between(ends.get(0), ends.get(1)));
    }

    private Limit bound(Clauses clauses, boolean thick, Dimension dimension) {
        return clauses.one(PortionClause.Bound.class, "what is accepted", said -> said.thick() == thick)
                .flatMap(said -> figures.quantity(said.amount(), dimension)
                        .<Limit>map(limit -> said.least() ? new Limit.AtLeast(limit) : new Limit.AtMost(limit)))
                .orElse(new Limit.NotStated());
    }

    private Measure smallest(Clauses clauses) {
        return clauses.one(PortionClause.Smallest.class, "what the smallest weighs")
                .flatMap(said -> figures.quantity(said.weight(), Dimension.WEIGHT))
                .<Measure>map(Measure.Stated::new)
                .orElse(new Measure.NotStated());
    }

    private Fewest fewest(Clauses clauses) {
        return clauses.one(PortionClause.BoundFrom.class, "how many there must be", PortionClause.BoundFrom::least)
                .flatMap(said -> figures.plainCount(said.amount(), 0, FinishReader.MOST)
                        .flatMap(number -> whole(said.whole()).<Fewest>map(from -> new Fewest.From(number, from))))
                .orElse(new Fewest.NotStated());
    }

    /** "a side", "each side" or "side". */
    private Optional<Fewest.Whole> whole(Name written) {
        String key = written.text().key();
        for (Fewest.Whole whole : Fewest.Whole.values()) {
            if (key.equals(whole.words()) || key.equals("a " + whole.words()) || key.equals("each " + whole.words())) {
                return Optional.of(whole);
            }
        }
        Diagnostic finding = report.finding(MeaningCode.UNKNOWN_WHOLE, written.span())
                .with("whole", written.text().text().toLowerCase(Locale.ROOT));
        report.add(NearestName.of(written.text(), WHOLES)
                .map(near -> report.didYouMean(finding, written.span(), near))
                .orElse(finding.help("Count them from a piece, from a side or from a carcass.")));
        return Optional.empty();
    }
}
