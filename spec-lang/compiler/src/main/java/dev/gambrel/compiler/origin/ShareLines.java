package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds in a line the characters that state its share. */
final class ShareLines {
    private static final Pattern NUMBER = Pattern.compile("[0-9.]+([eE][+-]?[0-9]+)?");

    private final Located located;
    private final TradeName whole;

    private ShareLines(Located located, TradeName whole) {
        this.located = located;
        this.whole = whole;
    }

    /** Nothing of a line that can state no share. */
    static Optional<ShareLine> of(Located located, TreePath above) {
        return isOfPart(located.line().keyword())
                ? Optional.of(new ShareLines(located, TradeName.of(above.last())).line())
                : Optional.empty();
    }

    private static boolean isOfPart(Keyword keyword) {
        return switch (keyword) {
            case CUT_LINE, BONE_LINE, TRIM_LINE, REMOVE_LINE, SQUARE_LINE, LOSS_LINE -> true;
            default -> false;
        };
    }

    private ShareLine line() {
        Place.InText head = located.report().at(located.line().head());
        List<Span> sources = located.line().clauses().stream()
                .filter(clause -> clause instanceof Clause.Cites)
                .map(clause -> at(((Clause.Cites) clause).name().span()))
                .toList();
        return new ShareLine(head.text(), head.span(), share(), sources);
    }

    private Span at(Span span) {
        return located.report().at(span).span();
    }

    private ShareLine.Share share() {
        boolean isEstimated =
                located.line().clauses().stream().anyMatch(clause -> clause instanceof EstimateClause.EstimatedBy);
        if (isEstimated) {
            return new ShareLine.Estimated();
        }
        return located.line().clauses().stream()
                .filter(clause -> clause instanceof Clause.Figures)
                .map(clause -> ((Clause.Figures) clause).figure())
                .filter(figure ->
                        figure.of().stream().allMatch(base -> base.text().equals(whole)))
                .findFirst()
                .map(this::written)
                .orElse(new ShareLine.NotWritten());
    }

    private ShareLine.Share written(Figure figure) {
        Span first = number(figure.amount());
        if (figure.more() instanceof Figure.More.PlusMinus more) {
            return new ShareLine.PlusMinus(first, number(more.amount()), end(more.amount()));
        } else if (figure.more() instanceof Figure.More.UpTo more) {
            return new ShareLine.Range(first, number(more.amount()), end(more.amount()));
        }
        return new ShareLine.MeanAlone(first, end(figure.amount()));
    }

    private int end(Amount amount) {
        return at(amount.span()).end();
    }

    private Span number(Amount amount) {
        Span span = amount.terms().get(0).span();
        Matcher number = NUMBER.matcher(located.report().slice(span));
        Span place = at(span);
        return new Span(place.start(), place.start() + (number.lookingAt() ? number.end() : 0));
    }
}
