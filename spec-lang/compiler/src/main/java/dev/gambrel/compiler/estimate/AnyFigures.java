package dev.gambrel.compiler.estimate;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.ValidRange;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Figures in whatever unit is written; one without a unit is a plain number. What cannot be read is reported. */
final class AnyFigures {
    private static final List<TradeName> SYMBOLS = Arrays.stream(Unit.values())
            .filter(unit -> unit != Unit.NUMBER)
            .map(unit -> TradeName.of(unit.symbol().replace("/", " ")))
            .toList();

    private final FileReport report;
    private final FigureReader figures;

    AnyFigures(FileReport report) {
        this.report = report;
        this.figures = new FigureReader(report);
    }

    Optional<Quantity> quantity(Amount amount) {
        return dimension(amount).flatMap(dimension -> figures.quantity(amount, dimension));
    }

    /** A range; nothing without a finding where the figure is none. */
    Optional<ValidRange.Stated> range(Figure figure) {
        if (!(figure.more() instanceof Figure.More.UpTo more)) {
            return Optional.empty();
        }
        return dimension(more.amount())
                .flatMap(dimension -> figures.both(figure.amount(), more.amount(), dimension))
                .map(ends -> new ValidRange.Stated(ends.get(0), ends.get(1)));
    }

    private Optional<Dimension> dimension(Amount amount) {
        Amount.Term last = amount.terms().get(amount.terms().size() - 1);
        return last.unit().isEmpty()
                ? Optional.of(Dimension.NUMBER)
                : unit(last.unit(), last.span()).map(Unit::dimension);
    }

    Optional<Unit> unit(String written, Span span) {
        Optional<Unit> unit = Unit.of(written);
        if (unit.isEmpty()) {
            Span word = new Span(span.end() - written.length(), span.end());
            Diagnostic finding = report.finding(MeaningCode.UNKNOWN_UNIT, word).with("unit", written);
            report.add(NearestName.of(written, SYMBOLS)
                    .map(near -> report.didYouMean(finding, word, near))
                    .orElseGet(() -> finding.help("Between a figure and a name stands a ×: 2.5 per mm × back fat")));
        }
        return unit;
    }
}
