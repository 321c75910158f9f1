package dev.gambrel.compiler.estimate;

import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.WrittenExpression;
import dev.gambrel.compiler.syntax.WrittenExpression.Coefficient;
import dev.gambrel.compiler.syntax.WrittenExpression.Inverse;
import dev.gambrel.compiler.syntax.WrittenExpression.Named;
import dev.gambrel.compiler.syntax.WrittenExpression.Negative;
import dev.gambrel.compiler.syntax.WrittenExpression.Product;
import dev.gambrel.compiler.syntax.WrittenExpression.Sum;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.estimate.Expression;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Gives the figures of an equation their units. */
final class ExpressionLowering {
    private final AnyFigures figures;

    ExpressionLowering(AnyFigures figures) {
        this.figures = figures;
    }

    /** The arithmetic; nothing, after a finding, if a unit is not known. */
    Optional<Expression> expression(WrittenExpression written) {
        if (written instanceof Sum sum) {
            return all(sum.terms(), Expression.Sum::new);
        } else if (written instanceof Product product) {
            return all(product.factors(), Expression.Product::new);
        } else if (written instanceof Negative negative) {
            return expression(negative.of()).map(Expression.Negative::new);
        } else if (written instanceof Inverse inverse) {
            return expression(inverse.of()).map(Expression.Inverse::new);
        }
        return written instanceof Named named
                ? Optional.of(new Expression.Named(named.name().text()))
                : coefficient((Coefficient) written);
    }

    private Optional<Expression> all(List<WrittenExpression> written, Function<List<Expression>, Expression> together) {
        List<Expression> read = new ArrayList<>();
        written.forEach(each -> expression(each).ifPresent(read::add));
        return read.size() == written.size() ? Optional.of(together.apply(read)) : Optional.empty();
    }

    private Optional<Expression> coefficient(Coefficient written) {
        List<Unit> per = new ArrayList<>();
        for (Amount.Term unit : written.per()) {
            figures.unit(unit.unit(), unit.span()).ifPresent(per::add);
        }
        return figures.quantity(written.figure())
                .filter(figure -> per.size() == written.per().size())
                .map(figure -> new Expression.Coefficient(figure, per));
    }
}
