package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.internal.grammar.GambrelParser.DailyContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ExpectationContext;
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
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;

/** Figures: numbers with units, spreads and ranges. */
final class FigureConverter {
    private static final int LONGEST_NUMBER = 200;
    private static final String WITHOUT_COMMA =
            "Write a point for the decimals, and nothing between thousands: 1.5, or 1500.";

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
        return figure(context.expectation(), of, offsets.of(context));
    }

    /** What is expected, with what it is a share of. */
    Figure figure(ExpectationContext context, List<Name> of, Span span) {
        List<Amount> amounts = new ArrayList<>(2);
        context.quantity().forEach(quantity -> amounts.add(amount(quantity)));
        return new Figure(amounts.get(0), more(amounts, context.PLUS_MINUS() != null), of, span);
    }

    Figure figure(ExpectationContext context) {
        return figure(context, List.of(), offsets.of(context));
    }

    /** What is lost in a day: a figure that is a share of nothing but that day's weight. */
    Figure figure(DailyContext context) {
        List<Amount> amounts = new ArrayList<>(2);
        for (int i = 0; i < context.number().size(); i++) {
            Amount.Term term = term(context.number(i), List.of(context.unit(i)));
            amounts.add(new Amount(List.of(term), term.span()));
        }
        Figure.More more = more(amounts, context.PLUS_MINUS() != null);
        return new Figure(amounts.get(0), more, List.of(), offsets.of(context));
    }

    private static Figure.More more(List<Amount> amounts, boolean spread) {
        if (amounts.size() < 2) {
            return new Figure.More.Nothing();
        }
        return spread ? new Figure.More.PlusMinus(amounts.get(1)) : new Figure.More.UpTo(amounts.get(1));
    }

    Amount amount(QuantityContext context) {
        List<Amount.Term> terms = new ArrayList<>(2);
        List<NumberContext> numbers = context.number();
        List<UnitContext> units = context.unit();
        for (int i = 0; i < numbers.size(); i++) {
            terms.add(term(numbers.get(i), i < units.size() ? List.of(units.get(i)) : List.of()));
        }
        return new Amount(terms, offsets.of(context));
    }

    private Amount.Term term(NumberContext number, List<UnitContext> unit) {
        Span span = offsets.of(number);
        return unit.isEmpty()
                ? new Amount.Term(number(number), "", span)
                : new Amount.Term(number(number), unit.get(0).getText(), span.cover(offsets.of(unit.get(0))));
    }

    private BigDecimal number(NumberContext context) {
        if (context.DECIMAL_COMMA() != null) {
            return unreadable(context, SyntaxCode.COMMA_IN_NUMBER, WITHOUT_COMMA);
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

    /** A number without sign or fraction. */
    BigDecimal plain(Token number) {
        Span span = offsets.of(number);
        String text = number.getText();
        if (number.getType() == GambrelLexer.DECIMAL_COMMA) {
            return unreadable(text, span, SyntaxCode.COMMA_IN_NUMBER, WITHOUT_COMMA);
        }
        boolean acceptable = text.length() <= LONGEST_NUMBER && Quantity.isAcceptable(new BigDecimal(text));
        return acceptable
                ? new BigDecimal(text)
                : unreadable(
                        text, span, SyntaxCode.NUMBER_TOO_LONG, "Write at most " + Quantity.MAX_DIGITS + " digits.");
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
        return unreadable(context.getText(), offsets.of(context), code, help);
    }

    private BigDecimal unreadable(String text, Span span, SyntaxCode code, String help) {
        damaged = true;
        report.add(report.finding(code, span)
                .with("found", text.length() > 40 ? text.substring(0, 40) + "…" : text)
                .help(help));
        return BigDecimal.ZERO;
    }
}
