package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser.DailyContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.FigureContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.NumberContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.QuantityContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.UnitContext;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.Span;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.tree.TerminalNode;

/** Figures: numbers with units, spreads and ranges. */
final class FigureConverter {
    private static final int LONGEST_NUMBER = 200;

    private final Offsets offsets;
    private final FileReport report;
    private final NameConverter names;
    private boolean damaged;

    FigureConverter(Offsets offsets, FileReport report, NameConverter names) {
        this.offsets = offsets;
        this.report = report;
        this.names = names;
    }

    /** Whether a number could not be read since this was last asked. */
    boolean takeDamage() {
        boolean was = damaged;
        damaged = false;
        return was;
    }

    Figure figure(FigureContext context) {
        List<Name> of = context.name() == null ? List.of() : List.of(names.name(context.name()));
        Figure.More more = more(context.quantity(), context.PLUS_MINUS() != null);
        return new Figure(amount(context.quantity(0)), more, of, offsets.of(context));
    }

    /** What is lost in a day: a figure that is a share of nothing but that day's weight. */
    Figure figure(DailyContext context) {
        Figure.More more = more(context.quantity(), context.PLUS_MINUS() != null);
        return new Figure(amount(context.quantity(0)), more, List.of(), offsets.of(context));
    }

    private Figure.More more(List<QuantityContext> quantities, boolean spread) {
        if (quantities.size() < 2) {
            return new Figure.More.Nothing();
        }
        Amount second = amount(quantities.get(1));
        return spread ? new Figure.More.PlusMinus(second) : new Figure.More.UpTo(second);
    }

    Amount amount(QuantityContext context) {
        List<Amount.Term> terms = new ArrayList<>(2);
        List<NumberContext> numbers = context.number();
        List<UnitContext> units = context.unit();
        for (int i = 0; i < numbers.size(); i++) {
            NumberContext number = numbers.get(i);
            boolean hasUnit = i < units.size();
            Span span = offsets.of(number);
            terms.add(new Amount.Term(
                    number(number),
                    hasUnit ? units.get(i).getText() : "",
                    hasUnit ? span.cover(offsets.of(units.get(i))) : span));
        }
        return new Amount(terms, offsets.of(context));
    }

    private BigDecimal number(NumberContext context) {
        if (context.DECIMAL_COMMA() != null) {
            return unreadable(
                    context,
                    SyntaxCode.COMMA_IN_NUMBER,
                    "Write a point for the decimals, and nothing between thousands: 1.5, or 1500.");
        }
        if (context.getText().length() > LONGEST_NUMBER) {
            return unreadable(context, SyntaxCode.NUMBER_TOO_LONG, "Write at most " + Quantity.MAX_DIGITS + " digits.");
        }
        BigDecimal value = new BigDecimal(context.NUMBER(0).getText());
        if (context.SLASH() != null) {
            value = fraction(context, context.NUMBER(), value);
        }
        if (!Quantity.isAcceptable(value)) {
            return unreadable(context, SyntaxCode.NUMBER_TOO_LONG, "Write at most " + Quantity.MAX_DIGITS + " digits.");
        }
        return context.MINUS() == null ? value : value.negate();
    }

    private BigDecimal fraction(NumberContext context, List<TerminalNode> numbers, BigDecimal first) {
        BigDecimal whole = numbers.size() == 3 ? first : BigDecimal.ZERO;
        BigDecimal top = new BigDecimal(numbers.get(numbers.size() - 2).getText());
        BigDecimal bottom = new BigDecimal(numbers.get(numbers.size() - 1).getText());
        try {
            return whole.add(top.divide(bottom));
        } catch (ArithmeticException notADecimal) {
            return unreadable(
                    context, SyntaxCode.INEXACT_FRACTION, "Use halves, quarters, eighths or sixteenths, or a decimal.");
        }
    }

    private BigDecimal unreadable(NumberContext context, SyntaxCode code, String help) {
        damaged = true;
        String text = context.getText();
        report.add(report.finding(code, offsets.of(context))
                .with("found", text.length() > 40 ? text.substring(0, 40) + "…" : text)
                .help(help));
        return BigDecimal.ZERO;
    }
}
