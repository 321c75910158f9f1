package dev.gambrel.tree.inspection;

import dev.gambrel.tree.estimate.Expression;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The figures and names of an expression, however deep it is.
 *
 * @param all in the order written
 * @param depth how many expressions stand inside one another
 */
public record Terms(List<Expression> all, int depth) {
    private record At(Expression expression, int depth) {}

    /** Copies the list. */
    public Terms {
        all = List.copyOf(all);
    }

    /** Looks an expression over, O(its size), without recursion. */
    public static Terms of(Expression expression) {
        List<Expression> terms = new ArrayList<>();
        int deepest = 0;
        Deque<At> open = new ArrayDeque<>(List.of(new At(expression, 1)));
        while (!open.isEmpty()) {
            At at = open.pop();
            deepest = Math.max(deepest, at.depth());
            List<Expression> inside = inside(at.expression());
            if (inside.isEmpty()) {
                terms.add(at.expression());
            }
            for (int i = inside.size() - 1; i >= 0; i--) {
                open.push(new At(inside.get(i), at.depth() + 1));
            }
        }
        return new Terms(terms, deepest);
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
}
