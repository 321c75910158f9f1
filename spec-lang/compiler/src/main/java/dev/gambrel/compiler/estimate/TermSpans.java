package dev.gambrel.compiler.estimate;

import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.compiler.syntax.WrittenExpression;
import dev.gambrel.compiler.syntax.WrittenExpression.Coefficient;
import dev.gambrel.compiler.syntax.WrittenExpression.Inverse;
import dev.gambrel.compiler.syntax.WrittenExpression.Named;
import dev.gambrel.compiler.syntax.WrittenExpression.Negative;
import dev.gambrel.compiler.syntax.WrittenExpression.Product;
import dev.gambrel.compiler.syntax.WrittenExpression.Sum;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;

/** Where the figures and names of an estimate line stand. */
public final class TermSpans {
    private TermSpans() {}

    /**
     * The places, counted as rules count terms.
     *
     * @param line an estimate line
     * @return one for each figure and name, in the order written
     */
    public static List<Span> of(Declaration line) {
        List<Span> spans = new ArrayList<>();
        line.clauses().stream()
                .filter(EstimateClause.WorkedOut.class::isInstance)
                .map(EstimateClause.WorkedOut.class::cast)
                .forEach(written -> collect(written.expression(), spans));
        return spans;
    }

    private static void collect(WrittenExpression written, List<Span> spans) {
        if (written instanceof Sum sum) {
            sum.terms().forEach(term -> collect(term, spans));
        } else if (written instanceof Product product) {
            product.factors().forEach(factor -> collect(factor, spans));
        } else if (written instanceof Negative negative) {
            collect(negative.of(), spans);
        } else if (written instanceof Inverse inverse) {
            collect(inverse.of(), spans);
        } else if (written instanceof Named named) {
            spans.add(named.name().span());
        } else if (written instanceof Coefficient coefficient) {
            spans.add(coefficient.span());
        }
    }
}
