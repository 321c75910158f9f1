package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gives figures their units and checks what they measure. What cannot be read is reported and gives nothing. */
public final class FigureReader {
    private static final BigDecimal OUNCES_IN_A_POUND = BigDecimal.valueOf(16);

    private final FileReport report;

    /** A reader that reports to a file. */
    public FigureReader(FileReport report) {
        this.report = report;
    }

    /** A figure with its spread or as a central range. */
    public Optional<Expected> expected(Figure figure, Dimension dimension) {
        if (figure.more() instanceof Figure.More.PlusMinus more) {
            return both(figure.amount(), more.amount(), dimension)
                    .map(pair -> new Expected.PlusMinus(pair.get(0), pair.get(1)));
        } else if (figure.more() instanceof Figure.More.UpTo more) {
            return both(figure.amount(), more.amount(), dimension)
                    .map(pair -> new Expected.CentralRange(pair.get(0), pair.get(1)));
        }
        return quantity(figure.amount(), dimension).map(Expected.Mean::new);
    }

    /** Two figures of one dimension; where only the second has a unit, it is that of both, and so is its fault. */
    public Optional<List<Quantity>> both(Amount first, Amount second, Dimension dimension) {
        Optional<Quantity> high = quantity(second, dimension);
        Optional<Quantity> low = high.isEmpty() && lacksUnit(first)
                ? Optional.empty()
                : quantity(lacksUnit(first) && !lacksUnit(second) ? withUnitOf(second, first) : first, dimension);
        return low.isEmpty() || high.isEmpty() ? Optional.empty() : Optional.of(List.of(low.get(), high.get()));
    }

    private static boolean lacksUnit(Amount amount) {
        return amount.terms().get(0).unit().isEmpty();
    }

    private static Amount withUnitOf(Amount unit, Amount number) {
        Amount.Term term = number.terms().get(0);
        String symbol = unit.terms().get(unit.terms().size() - 1).unit();
        return new Amount(List.of(new Amount.Term(term.number(), symbol, term.span())), number.span());
    }

    /** One figure. */
    public Optional<Quantity> quantity(Amount amount, Dimension dimension) {
        List<Quantity> terms = new ArrayList<>(2);
        for (Amount.Term term : amount.terms()) {
            Optional<Quantity> read = term(term, dimension);
            if (read.isEmpty()) {
                return Optional.empty();
            }
            terms.add(read.get());
        }
        return terms.size() == 1 ? Optional.of(terms.get(0)) : together(amount, terms.get(0), terms.get(1));
    }

    private Optional<Quantity> term(Amount.Term term, Dimension dimension) {
        if (term.unit().isEmpty() && dimension == Dimension.NUMBER) {
            return Optional.of(new Quantity(term.number(), Unit.NUMBER));
        }
        if (term.unit().isEmpty()) {
            report.add(report.finding(MeaningCode.MISSING_UNIT, term.span())
                    .with("number", term.number().toPlainString())
                    .with("dimension", dimension.words())
                    .help("Write the unit after it: " + dimension.unitSymbols() + "."));
            return Optional.empty();
        }
        Optional<Unit> unit = Unit.of(term.unit());
        if (unit.isEmpty()) {
            report.add(unknownUnit(term, dimension));
            return Optional.empty();
        }
        if (unit.get().dimension() != dimension) {
            Quantity found = new Quantity(term.number(), unit.get());
            report.add(report.finding(MeaningCode.WRONG_DIMENSION, term.span())
                    .with("found", found)
                    .with("dimension", unit.get().dimension().words())
                    .with("wanted", dimension.words())
                    .help(
                            dimension == Dimension.NUMBER
                                    ? "Leave the unit out."
                                    : "Units that fit: " + dimension.unitSymbols() + "."));
            return Optional.empty();
        }
        return Optional.of(new Quantity(term.number(), unit.get()));
    }

    private Diagnostic unknownUnit(Amount.Term term, Dimension dimension) {
        Diagnostic finding =
                report.finding(MeaningCode.UNKNOWN_UNIT, term.span()).with("unit", term.unit());
        List<TradeName> symbols = new ArrayList<>();
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == dimension && unit != Unit.NUMBER) {
                symbols.add(TradeName.of(unit.symbol()));
            }
        }
        Optional<TradeName> near = NearestName.of(term.unit(), symbols);
        return near.map(name -> report.didYouMean(finding, unitSpan(term), name))
                .orElseGet(() -> finding.help("Units that fit here: " + dimension.unitSymbols() + "."));
    }

    private static Span unitSpan(Amount.Term term) {
        return new Span(term.span().end() - term.unit().length(), term.span().end());
    }

    private Optional<Quantity> together(Amount amount, Quantity first, Quantity second) {
        if (first.unit() == Unit.POUND && second.unit() == Unit.OUNCE) {
            BigDecimal pounds = first.amount().add(second.amount().divide(OUNCES_IN_A_POUND));
            return Quantity.isAcceptable(pounds)
                    ? Optional.of(new Quantity(pounds, Unit.POUND))
                    : tooLong(amount, pounds);
        }
        report.add(report.finding(MeaningCode.MIXED_UNITS, amount.span())
                .with("first", first.unit().symbol())
                .with("second", second.unit().symbol())
                .help("Write one figure, or put a comma between two; only pounds and ounces go together: 47 lb 6 oz."));
        return Optional.empty();
    }

    private Optional<Quantity> tooLong(Amount amount, BigDecimal pounds) {
        report.add(report.finding(SyntaxCode.NUMBER_TOO_LONG, amount.span())
                .with("found", pounds.toPlainString().substring(0, Quantity.MAX_DIGITS) + "…")
                .help("Write at most " + Quantity.MAX_DIGITS + " digits, pounds and ounces together."));
        return Optional.empty();
    }

    /** A whole number without a unit, such as a number of ribs. */
    public Optional<Integer> plainCount(Amount amount, int least, int most) {
        Amount.Term term = amount.terms().get(0);
        boolean plain = amount.terms().size() == 1 && term.unit().isEmpty();
        String written = plain ? term.number().toPlainString() : report.slice(amount.span());
        return count(written, amount.span(), least, most);
    }

    /** A whole number within bounds, such as a rib or a revision. */
    public Optional<Integer> count(String written, Span span, int least, int most) {
        boolean digits = written.length() <= 6 && written.chars().allMatch(c -> c >= '0' && c <= '9');
        if (digits) {
            int count = Integer.parseInt(written);
            if (count >= least && count <= most) {
                return Optional.of(count);
            }
        }
        report.add(report.finding(MeaningCode.NOT_A_COUNT, span)
                .with("number", written.length() > 40 ? written.substring(0, 40) + "…" : written)
                .with("least", least)
                .with("most", most)
                .help("Write a whole number; of two, the lower one first."));
        return Optional.empty();
    }
}
