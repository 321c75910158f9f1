package dev.gambrel.yields.estimate;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.estimate.Dimensions;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Expression.Coefficient;
import dev.gambrel.tree.estimate.Expression.Inverse;
import dev.gambrel.tree.estimate.Expression.Named;
import dev.gambrel.tree.estimate.Expression.Negative;
import dev.gambrel.tree.estimate.Expression.Product;
import dev.gambrel.tree.estimate.Expression.Sum;

/**
 * The four operations, exactly.
 *
 * @param names what names come to
 */
record Arithmetic(Working names) {
    Amount of(Expression expression) throws CannotBeWorkedOut {
        Amount amount = worked(expression);
        if (amount.value().isTooLong()) {
            throw new CannotBeWorkedOut.TooLong();
        }
        return amount;
    }

    private Amount worked(Expression expression) throws CannotBeWorkedOut {
        if (expression instanceof Sum sum) {
            return sum(sum);
        } else if (expression instanceof Product product) {
            return product(product);
        } else if (expression instanceof Negative negative) {
            return of(negative.of()).negative();
        } else if (expression instanceof Inverse inverse) {
            return inverse(of(inverse.of()));
        }
        return expression instanceof Named named ? names.amount(named.name()) : coefficient((Coefficient) expression);
    }

    private Amount sum(Sum sum) throws CannotBeWorkedOut {
        Amount total = of(sum.terms().get(0));
        for (Expression term : sum.terms().subList(1, sum.terms().size())) {
            total = checked(total.plus(of(term)));
        }
        return total;
    }

    private Amount product(Product product) throws CannotBeWorkedOut {
        Amount total = new Amount(Fraction.ONE, Dimensions.NUMBER);
        for (Expression factor : product.factors()) {
            total = checked(total.times(of(factor)));
        }
        return total;
    }

    private static Amount checked(Amount amount) throws CannotBeWorkedOut {
        if (amount.value().isTooLong()) {
            throw new CannotBeWorkedOut.TooLong();
        }
        return amount;
    }

    private static Amount inverse(Amount divisor) throws CannotBeWorkedOut {
        if (divisor.value().isNothing()) {
            throw new CannotBeWorkedOut.DividedByNothing();
        }
        return divisor.inverse();
    }

    private static Amount coefficient(Coefficient coefficient) {
        Fraction value = Fraction.of(coefficient.figure().common());
        for (Unit unit : coefficient.per()) {
            value = value.times(Fraction.of(unit.factor()).inverse());
        }
        return new Amount(value, Dimensions.of(coefficient));
    }
}
