package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The share of a part as written, exactly. */
final class WrittenShare {
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private WrittenShare() {}

    /** The clause that gives a part's share of the cut above; nothing for a line that has no share. */
    static Optional<Clause.Figures> of(Declaration line, TradeName whole) {
        return switch (line.keyword()) {
            case CUT_LINE, BONE_LINE, TRIM_LINE, REMOVE_LINE, SQUARE_LINE, LOSS_LINE ->
                line.clauses().stream()
                        .filter(clause -> clause instanceof Clause.Figures)
                        .map(Clause.Figures.class::cast)
                        .filter(figures -> figures.figure().of().stream()
                                .allMatch(base -> base.text().equals(whole)))
                        .findFirst();
            default -> Optional.empty();
        };
    }

    /** Its mean in points; nothing where it is no readable share. */
    static Optional<BigDecimal> mean(Clause.Figures share) {
        Figure figure = share.figure();
        if (figure.more() instanceof Figure.More.UpTo more) {
            return points(more.amount())
                    .flatMap(high ->
                            points(figure.amount()).map(low -> low.add(high).divide(TWO)));
        }
        return points(figure.amount());
    }

    private static Optional<BigDecimal> points(Amount amount) {
        boolean share = amount.terms().size() == 1
                && (amount.terms().get(0).unit().equals("%")
                        || amount.terms().get(0).unit().isEmpty());
        return share ? Optional.of(amount.terms().get(0).number()) : Optional.empty();
    }

    /** The same share so many points lower, its spread as it was, said to stand where that was written. */
    static Clause.Figures lessened(Clause.Figures share, BigDecimal by, Span where) {
        Figure figure = share.figure();
        Figure.More more = figure.more() instanceof Figure.More.UpTo upTo
                ? new Figure.More.UpTo(less(upTo.amount(), by, where))
                : figure.more();
        return new Clause.Figures(new Figure(less(figure.amount(), by, where), more, figure.of(), where), where);
    }

    private static Amount less(Amount amount, BigDecimal by, Span where) {
        Amount.Term term = amount.terms().get(0);
        return new Amount(List.of(new Amount.Term(term.number().subtract(by), term.unit(), where)), where);
    }
}
