package dev.gambrel.yields.comparison.fact;

import dev.gambrel.tree.estimate.Expression;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** An expression as a list, so that two are the same when their lists are. Without recursion, however deep it is. */
final class ExpressionWords {
    private static final int LONGEST = 160;

    private ExpressionWords() {}

    /** Each operation before what it works on, with how many that are. */
    static List<String> inOrder(Expression expression) {
        List<String> found = new ArrayList<>();
        Deque<Expression> open = new ArrayDeque<>(List.of(expression));
        while (!open.isEmpty()) {
            Expression at = open.pop();
            List<Expression> inside = inside(at);
            found.add(inside.isEmpty() ? term(at) : at.getClass().getSimpleName() + " " + inside.size());
            for (int i = inside.size() - 1; i >= 0; i--) {
                open.push(inside.get(i));
            }
        }
        return found;
    }

    private static String term(Expression term) {
        if (term instanceof Expression.Coefficient coefficient) {
            return Exact.of(coefficient.figure()) + coefficient.per();
        }
        return "\n" + ((Expression.Named) term).name().key();
    }

    private static List<Expression> inside(Expression expression) {
        if (expression instanceof Expression.Sum sum) {
            return sum.terms();
        } else if (expression instanceof Expression.Product product) {
            return product.factors();
        } else if (expression instanceof Expression.Negative negative) {
            return List.of(negative.of());
        }
        return expression instanceof Expression.Inverse inverse ? List.of(inverse.of()) : List.of();
    }

    /** As it is written in the language, cut short where it is long. */
    static String of(Expression expression) {
        StringBuilder out = new StringBuilder();
        Deque<Object> open = new ArrayDeque<>(List.of(expression));
        while (!open.isEmpty() && out.length() <= LONGEST) {
            Object at = open.pop();
            if (at instanceof Expression inner) {
                unfold(inner, open);
            } else {
                out.append(at);
            }
        }
        return out.length() <= LONGEST ? out.toString() : out.substring(0, LONGEST) + "…";
    }

    private static void unfold(Expression expression, Deque<Object> open) {
        if (expression instanceof Expression.Sum sum) {
            open.push(")");
            joined(sum.terms(), " + ", open);
            open.push("(");
        } else if (expression instanceof Expression.Product product) {
            joined(product.factors(), " × ", open);
        } else if (expression instanceof Expression.Negative negative) {
            open.push(negative.of());
            open.push("-");
        } else if (expression instanceof Expression.Inverse inverse) {
            open.push(inverse.of());
            open.push("1 / ");
        } else {
            open.push(expression.toString());
        }
    }

    private static void joined(List<Expression> expressions, String between, Deque<Object> open) {
        for (int i = expressions.size() - 1; i >= 0; i--) {
            open.push(expressions.get(i));
            if (i > 0) {
                open.push(between);
            }
        }
    }
}
