package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser.CoefficientContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ExpressionContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.FactorContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ProductContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.UnitContext;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.WrittenExpression;
import dev.gambrel.compiler.syntax.WrittenExpression.Coefficient;
import dev.gambrel.compiler.syntax.WrittenExpression.Inverse;
import dev.gambrel.compiler.syntax.WrittenExpression.Named;
import dev.gambrel.compiler.syntax.WrittenExpression.Negative;
import dev.gambrel.compiler.syntax.WrittenExpression.Product;
import dev.gambrel.compiler.syntax.WrittenExpression.Sum;
import dev.gambrel.text.Span;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;

/** The arithmetic of an equation that was read whole. */
final class ExpressionConverter {
    private final Offsets offsets;
    private final NameConverter names;
    private final FigureConverter figures;

    ExpressionConverter(Offsets offsets, NameConverter names, FigureConverter figures) {
        this.offsets = offsets;
        this.names = names;
        this.figures = figures;
    }

    WrittenExpression expression(ExpressionContext context) {
        List<WrittenExpression> terms = new ArrayList<>();
        String sign = "";
        for (ParseTree child : context.children) {
            if (child instanceof ProductContext product) {
                WrittenExpression term = product(product);
                terms.add(sign.isEmpty() ? term : new Negative(term));
            } else if (child instanceof TerminalNode word && !word.getText().isBlank()) {
                sign = word.getText().equals("+") ? "" : word.getText();
            }
        }
        return terms.size() == 1 ? terms.get(0) : new Sum(terms);
    }

    private WrittenExpression product(ProductContext context) {
        List<WrittenExpression> factors = new ArrayList<>();
        boolean divides = false;
        for (ParseTree child : context.children) {
            if (child instanceof FactorContext factor) {
                WrittenExpression converted = factor(factor);
                factors.add(divides ? new Inverse(converted) : converted);
            } else if (!child.getText().isBlank()) {
                divides = child.getText().equals("/");
            }
        }
        return factors.size() == 1 ? factors.get(0) : new Product(factors);
    }

    private WrittenExpression factor(FactorContext context) {
        if (context.coefficient() != null) {
            return coefficient(context.coefficient());
        }
        return context.name() != null ? new Named(names.name(context.name())) : expression(context.expression());
    }

    private Coefficient coefficient(CoefficientContext context) {
        TerminalNode written = context.NUMBER() != null ? context.NUMBER() : context.DECIMAL_COMMA();
        BigDecimal number = figures.plain(written.getSymbol());
        List<Amount.Term> per = new ArrayList<>();
        Amount.Term own = term(number, "", offsets.of(written.getSymbol()));
        TerminalNode before = written;
        for (ParseTree child : context.children) {
            if (child instanceof UnitContext unit && before == written) {
                own = term(number, unit.getText(), own.span().cover(span(unit)));
            } else if (child instanceof UnitContext unit) {
                per.add(term(BigDecimal.ONE, unit.getText(), span(unit)));
            } else if (child instanceof TerminalNode word) {
                before = word;
            }
        }
        return new Coefficient(new Amount(List.of(own), own.span()), per, offsets.of(context));
    }

    private Span span(ParserRuleContext context) {
        return offsets.of(context);
    }

    private static Amount.Term term(BigDecimal number, String unit, Span span) {
        return new Amount.Term(number, unit, span);
    }
}
