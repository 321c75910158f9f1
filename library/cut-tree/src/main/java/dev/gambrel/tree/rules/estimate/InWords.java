package dev.gambrel.tree.rules.estimate;

import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Expression.Inverse;
import dev.gambrel.tree.estimate.Expression.Negative;
import dev.gambrel.tree.estimate.Expression.Product;
import dev.gambrel.tree.estimate.Expression.Sum;
import java.util.stream.Collectors;

/** A term in a sentence, as it is written in the language. */
final class InWords {
    private static final int LONGEST = 60;

    private InWords() {}

    static String of(Expression term) {
        String words = words(term instanceof Negative negative ? negative.of() : term);
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST) + "…";
    }

    private static String words(Expression term) {
        if (term instanceof Product product) {
            return product.factors().stream().map(InWords::words).collect(Collectors.joining(" × "));
        } else if (term instanceof Sum sum) {
            return "(" + sum.terms().stream().map(InWords::words).collect(Collectors.joining(" + ")) + ")";
        } else if (term instanceof Negative negative) {
            return "-" + words(negative.of());
        }
        return term instanceof Inverse inverse ? "1 / " + words(inverse.of()) : term.toString();
    }
}
